import type { Ring } from "../../geometry/flatten.ts";

/** Comparisons of a point with a side before the answer is "too far": some tenths of a second. */
const MOST_LOOKS = 6e7;

/**
 * How far two polygons stray from each other (their unit): the farthest that a point of either lies from the other's
 * border, the distance named after Hausdorff, taken at their points. Infinity beyond `most`, and where finding out
 * would take too long.
 */
export function deviation(one: Ring, other: Ring, most: number): number {
  if ((one.length / 2) * (other.length / 2) * 2 > MOST_LOOKS) return Infinity;
  return Math.max(oneWay(one, other, most), oneWay(other, one, most));
}

function oneWay(points: Ring, border: Ring, most: number): number {
  let worst = 0;
  for (let i = 0; i < points.length; i += 2) {
    let least = Infinity;
    const [x, y] = [points[i]!, points[i + 1]!];
    for (let k = 0, j = border.length - 2; k < border.length && least > worst; j = k, k += 2) {
      const far = fromSide(x, y, border[j]!, border[j + 1]!, border[k]!, border[k + 1]!);
      if (far < least) least = far;
    }
    if (least > worst) worst = least;
    if (worst > most * most) return Infinity;
  }
  return Math.sqrt(worst);
}

/** Squared distance of a point from a side. */
function fromSide(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const [dx, dy] = [bx - ax, by - ay];
  const long = dx * dx + dy * dy;
  const t = long > 0 ? Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / long)) : 0;
  const [ex, ey] = [x - ax - t * dx, y - ay - t * dy];
  return ex * ex + ey * ey;
}
