import { CURVE, eachContour, type Path } from "./path.ts";

/** A closed polygon: x, y, x, y … in µm; the last point joins the first. */
export type Ring = Float64Array;

/** Most sides one curve is cut into, whatever the tolerance. */
const MOST_SIDES = 1024;

/**
 * Contours as polygons whose points lie on the curves and whose sides stay within `tolerance` µm of them.
 *
 * Sides per curve after Wang (1984): n = ceil(sqrt(d(d-1)/8 · M / tolerance)), d = 3 and M the larger second
 * difference of the controls. Only + - * / and sqrt: the same polygon in every engine.
 */
export function flatten(path: Path, tolerance: number): Ring[] {
  const p = path.points;
  const rings: Ring[] = [];
  eachContour(path, (from, to) => {
    const ring: number[] = [];
    for (let i = from; i < to; i += CURVE) {
      const end = i + CURVE < to ? i + CURVE : from;
      flattenCurve(
        p[i]!,
        p[i + 1]!,
        p[i + 2]!,
        p[i + 3]!,
        p[i + 4]!,
        p[i + 5]!,
        p[end]!,
        p[end + 1]!,
        tolerance,
        ring,
      );
    }
    rings.push(Float64Array.from(ring));
  });
  return rings;
}

/** Whether the curve at `i` of `points`, ending at `end`, is a straight side. */
export const isStraight = (p: Int32Array, i: number, end: number): boolean =>
  p[i] === p[i + 2] && p[i + 1] === p[i + 3] && p[end] === p[i + 4] && p[end + 1] === p[i + 5];

function flattenCurve(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  x3: number,
  y3: number,
  tolerance: number,
  ring: number[],
): void {
  ring.push(x0, y0);
  const sides = sideCount(x0, y0, x1, y1, x2, y2, x3, y3, tolerance);
  for (let k = 1; k < sides; k++) {
    const t = k / sides;
    const s = 1 - t;
    const c0 = s * s * s;
    const c1 = 3 * s * s * t;
    const c2 = 3 * s * t * t;
    const c3 = t * t * t;
    ring.push(c0 * x0 + c1 * x1 + c2 * x2 + c3 * x3, c0 * y0 + c1 * y1 + c2 * y2 + c3 * y3);
  }
}

/** How many sides {@link flatten} cuts a curve into, all of one step of its parameter; 0 or 1 for a straight one. */
export function sideCount(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  x3: number,
  y3: number,
  tolerance: number,
): number {
  if (x1 === x0 && y1 === y0 && x2 === x3 && y2 === y3) return 1;
  const ax = x0 - 2 * x1 + x2;
  const ay = y0 - 2 * y1 + y2;
  const bx = x1 - 2 * x2 + x3;
  const by = y1 - 2 * y2 + y3;
  const bend = Math.sqrt(Math.max(ax * ax + ay * ay, bx * bx + by * by));
  return Math.min(MOST_SIDES, Math.ceil(Math.sqrt((0.75 * bend) / tolerance)));
}

/** Signed area of a polygon (µm²), by the shoelace formula about its first point. */
export function ringArea(ring: Ring): number {
  const ox = ring[0] ?? 0;
  const oy = ring[1] ?? 0;
  let sum = 0;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2)
    sum += (ring[j]! - ox) * (ring[i + 1]! - oy) - (ring[i]! - ox) * (ring[j + 1]! - oy);
  return sum / 2;
}
