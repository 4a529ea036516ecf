import type { SchemeFactory } from "./define.ts";
import { type FamilySpec, family } from "./family.ts";

/** One hue from light to dark, for grounds and blenders that never quarrel with a hero. */
export const tonal: SchemeFactory<FamilySpec> = family({
  name: "sprigwright/tonal",
  about: "One hue from light to dark, for grounds and blenders that never quarrel with a hero.",
  lead: [[0, 1]],
  natural: 0,
  hues: "one",
  inks: [
    { lightness: [0.93, 0.96], chroma: [0.014, 0.028], beside: [-0.02, 0.02] },
    { lightness: [0.52, 0.57], chroma: [0.09, 0.12], beside: [-0.015, 0.015] },
    { lightness: [0.73, 0.77], chroma: [0.07, 0.095], beside: [-0.025, 0.025] },
    { lightness: [0.31, 0.36], chroma: [0.06, 0.085], beside: [-0.03, 0.01] },
    { lightness: [0.84, 0.875], chroma: [0.04, 0.06], beside: [-0.025, 0.025] },
    { lightness: [0.63, 0.66], chroma: [0.09, 0.115], beside: [-0.02, 0.02] },
    { lightness: [0.42, 0.46], chroma: [0.08, 0.1], beside: [-0.02, 0.02] },
    { lightness: [0.22, 0.26], chroma: [0.04, 0.055], beside: [-0.03, 0.01] },
  ],
});
