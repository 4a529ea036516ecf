import { CURVE, eachContour, type Path } from "./path.ts";

/**
 * Least and greatest coordinate that the curves of a path themselves reach, on one axis (0 is x, 1 is y), in µm.
 * Exact up to rounding of doubles: a cubic turns back where its derivative, a quadratic, is zero.
 */
export function extentOf(path: Path, axis: 0 | 1): readonly [least: number, most: number] {
  const p = path.points;
  let [least, most] = [Infinity, -Infinity];
  const reach = (v: number): void => {
    least = Math.min(least, v);
    most = Math.max(most, v);
  };
  eachContour(path, (from, to) => {
    for (let i = from; i < to; i += CURVE) {
      const end = i + CURVE < to ? i + CURVE : from;
      const [p0, p1, p2, p3] = [p[i + axis]!, p[i + 2 + axis]!, p[i + 4 + axis]!, p[end + axis]!];
      reach(p0);
      for (const t of turningPoints(p1 - p0, p2 - p1, p3 - p2)) {
        const u = 1 - t;
        reach(u * u * (u * p0 + 3 * t * p1) + t * t * (3 * u * p2 + t * p3));
      }
    }
  });
  return [least, most];
}

/** Where a (1 - t)² + 2 b t (1 - t) + c t² is zero, within 0 and 1. */
function turningPoints(a: number, b: number, c: number): number[] {
  const square = a - 2 * b + c;
  const inside = (t: number): boolean => t > 0 && t < 1;
  if (square === 0) return a === b ? [] : [a / (2 * (a - b))].filter(inside);
  const under = b * b - a * c;
  if (under < 0) return [];
  const root = Math.sqrt(under);
  return [(a - b + root) / square, (a - b - root) / square].filter(inside);
}
