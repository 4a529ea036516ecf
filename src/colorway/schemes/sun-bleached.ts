import type { SchemeFactory } from "./define.ts";
import { type FamilySpec, family } from "./family.ts";

/** Colours that summers have faded: warm, pale and dusty, nothing dark. */
export const sunBleached: SchemeFactory<FamilySpec> = family({
  name: "sprigwright/sun-bleached",
  about: "Colours that summers have faded: warm, pale and dusty, nothing dark.",
  lead: [[0, 1]],
  natural: 0.1,
  inks: [
    { lightness: [0.945, 0.97], chroma: [0.014, 0.03], hue: [0.17, 0.29] },
    { lightness: [0.74, 0.81], chroma: [0.06, 0.1], hue: [0.95, 1.22] },
    { lightness: [0.77, 0.84], chroma: [0.035, 0.07], hue: [0.38, 0.74] },
    { lightness: [0.84, 0.89], chroma: [0.055, 0.1], hue: [0.17, 0.34] },
    { lightness: [0.57, 0.65], chroma: [0.035, 0.07], hue: [0.5, 0.9] },
    { lightness: [0.7, 0.78], chroma: [0.04, 0.07], hue: [0.26, 0.5] },
    { lightness: [0.85, 0.9], chroma: [0.03, 0.05], hue: [0.95, 1.12] },
    { lightness: [0.64, 0.71], chroma: [0.055, 0.085], hue: [0.06, 0.2] },
  ],
});
