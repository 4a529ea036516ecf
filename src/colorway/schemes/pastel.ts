import type { SchemeFactory } from "./define.ts";
import { type FamilySpec, family } from "./family.ts";

/** Light, soft, clean colours on a near white: nursery, spring, sweet things. */
export const pastel: SchemeFactory<FamilySpec> = family({
  name: "sprigwright/pastel",
  about: "Light, soft, clean colours on a near white: nursery, spring, sweet things.",
  lead: [[0, 1]],
  natural: 0.06,
  inks: [
    { lightness: [0.972, 0.985], chroma: [0.006, 0.014], hue: [0.14, 0.3] },
    { lightness: [0.83, 0.865], chroma: [0.075, 0.1], beside: [0, 0] },
    { lightness: [0.88, 0.91], chroma: [0.06, 0.085], beside: [0.22, 0.36] },
    { lightness: [0.8, 0.84], chroma: [0.085, 0.11], beside: [0.54, 0.7] },
    { lightness: [0.62, 0.68], chroma: [0.075, 0.1], beside: [-0.06, 0.06] },
    { lightness: [0.92, 0.94], chroma: [0.045, 0.06], beside: [0.4, 0.5] },
    { lightness: [0.85, 0.88], chroma: [0.07, 0.09], beside: [0.78, 0.88] },
    { lightness: [0.74, 0.78], chroma: [0.08, 0.1], beside: [0.3, 0.4] },
  ],
});
