import type { SchemeFactory } from "./define.ts";
import { type FamilySpec, family } from "./family.ts";

/** Strong, clear colours on white, each at the lightness where its hue is strongest. */
export const bright: SchemeFactory<FamilySpec> = family({
  name: "sprigwright/bright",
  about: "Strong, clear colours on white, each at the lightness where its hue is strongest.",
  lead: [[0, 1]],
  natural: 0.7,
  inks: [
    { lightness: [0.985, 1], chroma: [0, 0.006], hue: [0.1, 0.3] },
    { lightness: [0.62, 0.66], chroma: [0.21, 0.26], beside: [0, 0] },
    { lightness: [0.66, 0.7], chroma: [0.18, 0.23], beside: [0.27, 0.38] },
    { lightness: [0.66, 0.7], chroma: [0.18, 0.23], beside: [0.6, 0.72] },
    { lightness: [0.32, 0.38], chroma: [0.12, 0.17], hue: [0.72, 0.8] },
    { lightness: [0.72, 0.78], chroma: [0.13, 0.17], beside: [0.14, 0.2] },
    { lightness: [0.6, 0.66], chroma: [0.2, 0.25], beside: [-0.14, -0.1] },
    { lightness: [0.7, 0.76], chroma: [0.16, 0.2], beside: [0.45, 0.53] },
  ],
});
