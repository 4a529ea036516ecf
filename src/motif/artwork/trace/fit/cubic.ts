import { dot, minus, type Point, size } from "./point.ts";
import { solve } from "./solve.ts";

/** A cubic Bézier: start, two controls, end. */
export type Cubic = readonly [Point, Point, Point, Point];

/** What a free control has in place of a direction. */
const AXES: readonly Point[] = [
  [1, 0],
  [0, 1],
];

/** The point of a curve at t. */
export function pointAt([a, b, c, d]: Cubic, t: number): Point {
  const s = 1 - t;
  const [b0, b1, b2, b3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return [b0 * a[0] + b1 * b[0] + b2 * c[0] + b3 * d[0], b0 * a[1] + b1 * b[1] + b2 * c[1] + b3 * d[1]];
}

/** One step of Newton's method towards the t at which a curve is nearest to a point. */
export function nearer(curve: Cubic, p: Point, t: number): number {
  const s = 1 - t;
  const [a, b, c, d] = curve;
  const off = minus(pointAt(curve, t), p);
  const [u, v, w] = [minus(b, a), minus(c, b), minus(d, c)];
  const first: Point = [
    3 * (s * s * u[0] + 2 * s * t * v[0] + t * t * w[0]),
    3 * (s * s * u[1] + 2 * s * t * v[1] + t * t * w[1]),
  ];
  const [e, f] = [minus(v, u), minus(w, v)];
  const second: Point = [6 * (s * e[0] + t * f[0]), 6 * (s * e[1] + t * f[1])];
  const slope = dot(first, first) + dot(off, second);
  return slope > 0 ? Math.max(0, Math.min(1, t - dot(off, first) / slope)) : t;
}

/**
 * The controls with which a curve from the first to the last point comes nearest to those between, by least squares,
 * with each point at its t. An end with a direction keeps to it; a free end does not (P. J. Schneider, "An algorithm
 * for automatically fitting digitized curves", 1990, has the case of two directions).
 */
export function fitCubic(
  points: readonly Point[],
  ts: readonly number[],
  first: Point | undefined,
  last: Point | undefined,
): Cubic | undefined {
  const [a, d] = [points[0]!, points[points.length - 1]!];
  // Unknowns: how far along its direction a control lies, or both coordinates of a free one.
  const ways: (readonly [control: 1 | 2, way: Point])[] = [];
  for (const way of first ? [first] : AXES) ways.push([1, way]);
  for (const way of last ? [last] : AXES) ways.push([2, way]);
  const n = ways.length;
  const rows = Array.from({ length: n }, () => new Float64Array(n + 1));
  for (let i = 1; i + 1 < points.length; i++) {
    const t = ts[i]!;
    const s = 1 - t;
    const [b0, b1, b2, b3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
    // Directions are seen from the curve's own ends, coordinates from the origin.
    const [ga, gd] = [b0 + (first ? b1 : 0), b3 + (last ? b2 : 0)];
    const p = points[i]!;
    const rest: Point = [p[0] - ga * a[0] - gd * d[0], p[1] - ga * a[1] - gd * d[1]];
    for (let j = 0; j < n; j++) {
      const [cj, wj] = ways[j]!;
      const bj = cj === 1 ? b1 : b2;
      for (let k = 0; k < n; k++) {
        const [ck, wk] = ways[k]!;
        rows[j]![k] = rows[j]![k]! + bj * (ck === 1 ? b1 : b2) * dot(wj, wk);
      }
      rows[j]![n] = rows[j]![n]! + bj * dot(wj, rest);
    }
  }
  const found = solve(rows);
  if (!found) return undefined;
  const control = (which: 1 | 2, end: Point, given: Point | undefined): Point | undefined => {
    const at = which === 1 ? 0 : n - (given ? 1 : 2);
    if (!given) return [found[at]!, found[at + 1]!];
    const along = found[at]!;
    return along > 0 ? [end[0] + given[0] * along, end[1] + given[1] * along] : undefined;
  };
  const [b, c] = [control(1, a, first), control(2, d, last)];
  return b && c && isTame(a, b, c, d) ? [a, b, c, d] : undefined;
}

/** Whether controls are not so far out that the curve would loop. */
function isTame(a: Point, b: Point, c: Point, d: Point): boolean {
  const most = 3 * size(minus(d, a)) + 1;
  return size(minus(b, a)) <= most && size(minus(c, d)) <= most;
}
