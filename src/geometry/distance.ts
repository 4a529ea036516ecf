import type { Outline } from "./outline.ts";

/**
 * Least distance (µm) between two filled outlines, `b` moved by (dx, dy): 0 when they touch, cross or one
 * lies in the other, infinite when one is empty. Exact for the polygons up to rounding of doubles.
 */
export function distanceBetween(a: Outline, b: Outline, dx = 0, dy = 0): number {
  const squared = nearestSquared(a, b, dx, dy, Infinity, 0);
  return squared > 0 && overlaps(a, b, dx, dy) ? 0 : Math.sqrt(squared);
}

/** Whether two filled outlines, `b` moved by (dx, dy), are closer than `limit` µm (above 0). */
export function isCloser(a: Outline, b: Outline, dx: number, dy: number, limit: number): boolean {
  if (boxGapSquared(a.box, 0, b.box, 0, dx, dy) >= limit * limit) return false;
  const squared = limit * limit;
  return nearestSquared(a, b, dx, dy, squared, squared) < squared || overlaps(a, b, dx, dy);
}

/** Whether a point lies in a filled outline (nonzero winding). */
export function contains(outline: Outline, x: number, y: number): boolean {
  const { box, points, rings } = outline;
  if (!(x >= box[0]! && x <= box[2]! && y >= box[1]! && y <= box[3]!)) return false;
  let winding = 0;
  for (let r = 0; r + 1 < rings.length; r++) {
    const last = rings[r + 1]! * 2 - 2;
    for (let i = rings[r]! * 2; i < last; i += 2) {
      const y0 = points[i + 1]!;
      const y1 = points[i + 3]!;
      if (y0 <= y === y1 <= y) continue;
      const x0 = points[i]!;
      const side = (points[i + 2]! - x0) * (y - y0) - (x - x0) * (y1 - y0);
      if (y1 > y0 ? side > 0 : side < 0) winding += y1 > y0 ? 1 : -1;
    }
  }
  return winding !== 0;
}

/** Squared distance of point p from the side a-b. */
export function pointSideSquared(
  px: number,
  py: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
): number {
  const ux = bx - ax;
  const uy = by - ay;
  const wx = px - ax;
  const wy = py - ay;
  const along = ux * wx + uy * wy;
  if (along <= 0) return wx * wx + wy * wy;
  const length = ux * ux + uy * uy;
  if (along >= length) {
    const vx = px - bx;
    const vy = py - by;
    return vx * vx + vy * vy;
  }
  const t = along / length;
  const ox = wx - t * ux;
  const oy = wy - t * uy;
  return ox * ox + oy * oy;
}

/** Squared gap between box `i` of `a` and box `j` of `b` moved by (dx, dy); four numbers a box. */
export function boxGapSquared(
  a: Float64Array,
  i: number,
  b: Float64Array,
  j: number,
  dx: number,
  dy: number,
): number {
  const gapX = Math.max(a[i]! - b[j + 2]! - dx, b[j]! + dx - a[i + 2]!, 0);
  const gapY = Math.max(a[i + 1]! - b[j + 3]! - dy, b[j + 1]! + dy - a[i + 3]!, 0);
  return gapX * gapX + gapY * gapY;
}

/**
 * Squared distance between the sides of two outlines, or `cut` when that is less. Ends early with whatever it
 * has once that is below `stop`. Every point begins one side of its ring, so testing begin against side, both
 * ways round, and crossings, covers all that four ends against two sides would.
 */
function nearestSquared(a: Outline, b: Outline, dx: number, dy: number, cut: number, stop: number): number {
  const p = a.points;
  const q = b.points;
  let best = cut;
  for (let i = 0; i < a.runs.length; i += 2) {
    if (boxGapSquared(a.boxes, i * 2, b.box, 0, dx, dy) >= best) continue;
    for (let j = 0; j < b.runs.length; j += 2) {
      if (boxGapSquared(a.boxes, i * 2, b.boxes, j * 2, dx, dy) >= best) continue;
      const lastA = a.runs[i + 1]! * 2;
      const firstB = b.runs[j]! * 2;
      const lastB = b.runs[j + 1]! * 2;
      for (let s = a.runs[i]! * 2; s < lastA; s += 2) {
        const ax = p[s]! - dx;
        const ay = p[s + 1]! - dy;
        const bx = p[s + 2]! - dx;
        const by = p[s + 3]! - dy;
        for (let t = firstB; t < lastB; t += 2) {
          const cx = q[t]!;
          const cy = q[t + 1]!;
          const ex = q[t + 2]!;
          const ey = q[t + 3]!;
          const one = pointSideSquared(ax, ay, cx, cy, ex, ey);
          if (one < best) best = one;
          const two = pointSideSquared(cx, cy, ax, ay, bx, by);
          if (two < best) best = two;
          if (best < stop) return best;
          if (cross(ax, ay, bx, by, cx, cy, ex, ey)) return 0;
        }
      }
    }
  }
  return best;
}

/** Whether the inner parts of two sides cross; where one only touches, a distance of 0 shows it. */
function cross(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  ex: number,
  ey: number,
): boolean {
  const ux = bx - ax;
  const uy = by - ay;
  const c = ux * (cy - ay) - uy * (cx - ax);
  const e = ux * (ey - ay) - uy * (ex - ax);
  if (c > 0 ? e >= 0 : e <= 0) return false;
  const vx = ex - cx;
  const vy = ey - cy;
  const a = vx * (ay - cy) - vy * (ax - cx);
  const b = vx * (by - cy) - vy * (bx - cx);
  return a > 0 ? b < 0 : b > 0;
}

/** Whether a ring of one begins within the other: all it takes once their sides are known not to meet. */
function overlaps(a: Outline, b: Outline, dx: number, dy: number): boolean {
  for (let r = 0; r + 1 < a.rings.length; r++) {
    const i = a.rings[r]! * 2;
    if (contains(b, a.points[i]! - dx, a.points[i + 1]! - dy)) return true;
  }
  for (let r = 0; r + 1 < b.rings.length; r++) {
    const i = b.rings[r]! * 2;
    if (contains(a, b.points[i]! + dx, b.points[i + 1]! + dy)) return true;
  }
  return false;
}
