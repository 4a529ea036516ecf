import { flatten } from "../../geometry/flatten.ts";
import { middleOf } from "../../geometry/middle.ts";
import { areaOf, type Path } from "../../geometry/path.ts";
import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";

/** Rays on which the outline is looked at. */
const RAYS = 120;
/** Highest order told from a disc. */
const HIGHEST = 12;
/** Share of the ink that may differ when the motif is turned onto itself: drawn ones stray a little. */
const UNLIKE = 0.1;

/**
 * In how many ways a motif can be turned without the eye seeing it: 1 for a pear, 2 for a spindle, 5 for a flower of
 * five petals, 0 when no turn shows (a disc).
 *
 * On each of 120 rays from the middle of the ink the ink is weighed, ∫ r dr. The order is the largest k up to 12 for
 * which the weights, moved on by a k-th of a turn, differ by less than a tenth of them all; and 0 when no turn at all
 * makes them differ by more.
 */
export function symmetryOrder(outline: Path): number {
  const weights = weightsOf(outline);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const unlike = (rays: number): number => {
    let sum = 0;
    for (let i = 0; i < RAYS; i++) sum += Math.abs(weights[i]! - weights[(i + rays) % RAYS]!);
    return sum / (2 * total);
  };
  if (!(total > 0)) return 0;
  let shows = false;
  for (let rays = 1; rays <= RAYS / 2 && !shows; rays++) shows = unlike(rays) > UNLIKE;
  if (!shows) return 0;
  for (let k = HIGHEST; k > 1; k--) if (unlike(Math.round(RAYS / k)) < UNLIKE) return k;
  return 1;
}

/** ∫ r dr within the ink along each ray: half the squares of where the outline leaves it less those where it enters. */
function weightsOf(outline: Path): Float64Array {
  const [ox, oy] = middleOf(outline);
  const weights = new Float64Array(RAYS);
  const rays = Array.from({ length: RAYS }, (_, i) => [cosTurns(i / RAYS), sinTurns(i / RAYS)] as const);
  for (const ring of flatten(outline, Math.sqrt(Math.abs(areaOf(outline))) / 100))
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [x0, y0, x1, y1] = [ring[j]! - ox, ring[j + 1]! - oy, ring[i]! - ox, ring[i + 1]! - oy];
      const swept = x0 * y1 - x1 * y0;
      if (swept === 0) continue;
      rays.forEach(([c, s], ray) => {
        // Which side of the ray each end lies on; a side that crosses it ahead of the middle counts.
        const before = c * y0 - s * x0;
        const after = c * y1 - s * x1;
        if (before < 0 === after < 0) return;
        const r = swept / (after - before);
        if (r > 0) weights[ray]! += after > before ? r * r : -r * r;
      });
    }
  return weights;
}
