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
    { lightness: [0.27, 0.42], chroma: [0.045, 0.085], hue: [0.66, 0.97] },
    { lightness: [0.62, 0.73], chroma: [0.08, 0.14], hue: [0.88, 1.15] },
    { lightness: [0.76, 0.87], chroma: [0.09, 0.14], hue: [0.1, 0.23] },
    { lightness: [0.49, 0.59], chroma: [0.06, 0.11], hue: [0.7, 1] },
    { lightness: [0.87, 0.93], chroma: [0.025, 0.06], hue: [0.92, 1.22] },
    { lightness: [0.22, 0.27], chroma: [0.035, 0.055], hue: [0.68, 0.84] },
    { lightness: [0.7, 0.77], chroma: [0.05, 0.08], hue: [0.64, 0.8] },
    { lightness: [0.6, 0.66], chroma: [0.12, 0.155], hue: [0.04, 0.12] },
  ],
});
