import type { SchemeFactory } from "./define.ts";
import { type FamilySpec, family } from "./family.ts";

/** Quiet, greyed colours on a warm off-white: a calm ground for cloth that is lived with. */
export const muted: SchemeFactory<FamilySpec> = family({
  name: "sprigwright/muted",
  about: "Quiet, greyed colours on a warm off-white: a calm ground for cloth that is lived with.",
  lead: [[0, 1]],
  natural: 0.12,
  inks: [
    { lightness: [0.91, 0.945], chroma: [0.012, 0.026], hue: [0.18, 0.28] },
    { lightness: [0.54, 0.62], chroma: [0.06, 0.085], beside: [0, 0] },
    { lightness: [0.68, 0.74], chroma: [0.045, 0.065], beside: [0.1, 0.2] },
    { lightness: [0.62, 0.69], chroma: [0.075, 0.1], beside: [0.42, 0.56] },
    { lightness: [0.33, 0.39], chroma: [0.035, 0.055], beside: [-0.05, 0.05] },
    { lightness: [0.81, 0.86], chroma: [0.035, 0.05], beside: [0.42, 0.56] },
    { lightness: [0.74, 0.78], chroma: [0.045, 0.06], beside: [-0.16, -0.08] },
    { lightness: [0.46, 0.51], chroma: [0.055, 0.075], beside: [0.24, 0.32] },
  ],
});
