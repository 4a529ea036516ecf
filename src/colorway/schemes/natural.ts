import { oklabOf } from "../../motif/artwork/trace/oklab.ts";
import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";

/** Steps along each of the six edges of the sRGB cube that join its full colours. */
const STEPS = 16;
/** The edges by their corners: red, yellow, green, cyan, blue, magenta, red. */
const CORNERS: readonly (readonly [red: number, green: number, blue: number])[] = [
  [255, 0, 0],
  [255, 255, 0],
  [0, 255, 0],
  [0, 255, 255],
  [0, 0, 255],
  [255, 0, 255],
  [255, 0, 0],
];

/**
 * Lightness at which sRGB has the strongest colours of a hue: yellow is strong when light, blue when dark. Found among
 * the full colours of the cube's edges.
 */
function strongestLightness(hue: number): number {
  const [x, y] = [cosTurns(hue), sinTurns(hue)];
  let [best, nearest] = [0.7, -2];
  for (let edge = 0; edge < 6; edge++)
    for (let step = 0; step < STEPS; step++) {
      const [from, to] = [CORNERS[edge]!, CORNERS[edge + 1]!];
      const at = (c: 0 | 1 | 2): number => from[c] + ((to[c] - from[c]) * step) / STEPS;
      const [lightness, a, b] = oklabOf(at(0), at(1), at(2));
      const along = (a * x + b * y) / Math.sqrt(a * a + b * b);
      if (along > nearest) [best, nearest] = [lightness, along];
    }
  return best;
}

/** Chroma from which on a colour is drawn all the way to its natural lightness; a grey has none. */
const COLORFUL = 0.08;

/**
 * A lightness drawn by `pull` (0..1) towards that at which sRGB has the strongest colours of the hue: what keeps yellows
 * from turning to olive.
 */
export const natural = (pull: number, lightness: number, chroma: number, hue: number): number =>
  pull === 0
    ? lightness
    : lightness + pull * Math.min(1, chroma / COLORFUL) * (strongestLightness(hue) - lightness);
