import { badShape, shown } from "../../errors/catalogue.ts";
import type { Path } from "../../geometry/path.ts";
import type { Chain } from "./chain.ts";
import { strokeAlong } from "./stroke.ts";

/** The narrowest line and the smallest dot of a drawing, in mm: a little more than half a millimetre. */
export const LEAST = 0.52;

/**
 * A brush stroke along a curve: round ends, and a width that goes smoothly through `widths` (mm), one or more, spread evenly
 * over the curve's pieces. Nowhere narrower than `least` mm. The ends reach half a width beyond the curve.
 * @throws SprigwrightError `bad-shape`
 */
export function brush(spine: Chain, widths: number | readonly number[], least: number = LEAST): Path {
  const list = typeof widths === "number" ? [widths] : widths;
  const bad = [...list, least].find((w) => !(w >= 0 && w < Infinity));
  if (list.length === 0 || bad !== undefined)
    throw badShape("shapes > brush", `a width is ${shown(bad)}, not a number of mm`);
  const halves = list.map((w) => Math.max(least, w) / 2);
  const last = halves.length - 1;
  const curves = (spine.length - 2) / 6;
  // Sides are cubics between stations, as widths are between those given: a station at each keeps them exact.
  let pieces = 3;
  while (last > 0 && (pieces * curves) % last !== 0) pieces++;
  const slopes = halves.map((_, i) => slopeAt(halves, i));
  return strokeAlong(
    spine,
    (share) => {
      if (last === 0) return [halves[0]!, 0];
      const i = Math.min(last - 1, Math.floor(share * last));
      const t = share * last - i;
      const [a, b, p, q] = [halves[i]!, halves[i + 1]!, slopes[i]!, slopes[i + 1]!];
      const [c, d] = [3 * (b - a) - 2 * p - q, 2 * (a - b) + p + q];
      return [a + t * (p + t * (c + t * d)), (p + t * (2 * c + 3 * t * d)) * last];
    },
    pieces,
  );
}

/**
 * Slope at one of evenly spaced values, so that the cubics between never go beyond the values: the harmonic mean of the
 * rises to both sides, 0 at a peak (after Fritsch and Butland, 1984).
 */
function slopeAt(values: readonly number[], i: number): number {
  const before = i > 0 ? values[i]! - values[i - 1]! : undefined;
  const after = i < values.length - 1 ? values[i + 1]! - values[i]! : undefined;
  if (before === undefined || after === undefined) return before ?? after ?? 0;
  return before * after <= 0 ? 0 : (2 * before * after) / (before + after);
}
