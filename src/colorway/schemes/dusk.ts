import type { SchemeFactory } from "./define.ts";
import { type FamilySpec, family } from "./family.ts";

/** The hour after sunset: slate violet, mauve and dusty rose, with amber from a lit window. */
export const dusk: SchemeFactory<FamilySpec> = family({
  name: "sprigwright/dusk",
  about: "The hour after sunset: slate violet, mauve and dusty rose, with amber from a lit window.",
  lead: [[0.74, 0.84]],
  natural: 0,
  hues: [[0.7, 1.21]],
  inks: [
    { lightness: [0.3, 0.4], chroma: [0.045, 0.08], hue: [0.7, 0.9] },
    { lightness: [0.64, 0.71], chroma: [0.09, 0.13], hue: [0.94, 1.08] },
    { lightness: [0.79, 0.85], chroma: [0.095, 0.13], hue: [0.13, 0.22] },
    { lightness: [0.5, 0.58], chroma: [0.065, 0.1], hue: [0.8, 0.93] },
    { lightness: [0.88, 0.92], chroma: [0.03, 0.055], hue: [0.04, 0.18] },
    { lightness: [0.22, 0.27], chroma: [0.035, 0.055], hue: [0.68, 0.84] },
    { lightness: [0.7, 0.77], chroma: [0.05, 0.08], hue: [0.64, 0.8] },
    { lightness: [0.6, 0.66], chroma: [0.12, 0.155], hue: [0.04, 0.12] },
  ],
});
