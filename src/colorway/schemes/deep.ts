import type { SchemeFactory } from "./define.ts";
import { type FamilySpec, family } from "./family.ts";

/** Dark, rich colours, such as wine, bottle green and ink blue, with a gold and a cream to lift them. */
export const deep: SchemeFactory<FamilySpec> = family({
  name: "sprigwright/deep",
  about: "Dark, rich colours, such as wine, bottle green and ink blue, with a gold and a cream to lift them.",
  lead: [
    [0.02, 0.12],
    [0.4, 0.55],
    [0.66, 0.78],
    [0.84, 1],
  ],
  natural: 0,
  shun: [[0.25, 0.37]],
  inks: [
    { lightness: [0.25, 0.3], chroma: [0.04, 0.065], beside: [0, 0] },
    { lightness: [0.46, 0.52], chroma: [0.12, 0.16], beside: [0.36, 0.58] },
    { lightness: [0.71, 0.77], chroma: [0.12, 0.15], hue: [0.17, 0.235] },
    { lightness: [0.42, 0.47], chroma: [0.09, 0.12], beside: [0.1, 0.3] },
    { lightness: [0.88, 0.92], chroma: [0.03, 0.05], hue: [0.2, 0.27] },
    { lightness: [0.56, 0.62], chroma: [0.12, 0.15], beside: [0.66, 0.8] },
    { lightness: [0.35, 0.39], chroma: [0.08, 0.11], beside: [-0.16, -0.1] },
    { lightness: [0.63, 0.68], chroma: [0.06, 0.09], beside: [0.2, 0.3] },
  ],
});
