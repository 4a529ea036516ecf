import type { SchemeFactory } from "./define.ts";
import { type FamilySpec, family } from "./family.ts";

/** Clear colours that glow on a dark ground: midnight, ink green, aubergine. */
export const nightGround: SchemeFactory<FamilySpec> = family({
  name: "sprigwright/night-ground",
  about: "Clear colours that glow on a dark ground: midnight, ink green, aubergine.",
  lead: [
    [0.42, 0.56],
    [0.66, 0.78],
    [0.8, 0.95],
  ],
  natural: 0.12,
  inks: [
    { lightness: [0.2, 0.26], chroma: [0.03, 0.055], beside: [0, 0] },
    { lightness: [0.7, 0.77], chroma: [0.11, 0.15], beside: [0.34, 0.58] },
    { lightness: [0.8, 0.88], chroma: [0.09, 0.14], hue: [0.13, 0.31] },
    { lightness: [0.62, 0.68], chroma: [0.08, 0.11], beside: [0.04, 0.16] },
    { lightness: [0.93, 0.955], chroma: [0.015, 0.035], hue: [0, 1] },
    { lightness: [0.42, 0.48], chroma: [0.055, 0.085], beside: [-0.04, 0.04] },
    { lightness: [0.7, 0.76], chroma: [0.12, 0.15], beside: [0.66, 0.8] },
    { lightness: [0.8, 0.85], chroma: [0.06, 0.08], beside: [-0.16, -0.08] },
  ],
});
