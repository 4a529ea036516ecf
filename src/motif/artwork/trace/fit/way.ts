import { angle, minus, type Point, unit } from "./point.ts";

/** Points on either side that say which way a smooth outline goes. */
export const SIGHT = 4;
/** Most points that do so where it goes evenly. */
export const FARTHEST = 128;
/** What pixels turn the way between two points by, in radians, times the points between them. */
const STEADY = 0.16;

/**
 * The way of the run at one of its inner points: from as far before it to as far behind as the outline goes evenly,
 * for the farther apart the two are the less a pixel's step turns it.
 */
export function wayAt(points: readonly Point[], i: number): Point {
  const most = Math.min(i, points.length - 1 - i);
  const from = (reach: number): Point =>
    unit(minus(points[i + reach]!, points[i - reach]!), minus(points[i + 1]!, points[i]!));
  let reach = Math.min(SIGHT, most);
  let way = from(reach);
  while (2 * reach <= most && reach < FARTHEST) {
    const wider = from(2 * reach);
    if (Math.abs(angle(way, wider)) > STEADY / reach) break;
    reach *= 2;
    way = wider;
  }
  return way;
}
