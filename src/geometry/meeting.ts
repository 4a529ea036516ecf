import type { Outline } from "./outline.ts";

/** Pairs of runs that are looked at before the answer is taken to be yes: some milliseconds. */
const MOST_LOOKS = 2e6;

/** Whether borders of two outlines share a point; also when finding out would take long. */
export function bordersMeet(a: Outline, b: Outline): boolean {
  if ((a.runs.length / 2) * (b.runs.length / 2) > MOST_LOOKS) return true;
  for (let i = 0; i < a.runs.length; i += 2) {
    if (!boxesMeet(a.boxes, 2 * i, b.box, 0)) continue;
    for (let j = 0; j < b.runs.length; j += 2) {
      if (!boxesMeet(a.boxes, 2 * i, b.boxes, 2 * j)) continue;
      for (let s = a.runs[i]!; s < a.runs[i + 1]!; s++)
        for (let t = b.runs[j]!; t < b.runs[j + 1]!; t++)
          if (sidesMeet(a.points, 2 * s, b.points, 2 * t)) return true;
    }
  }
  return false;
}

/**
 * Whether a side of an outline meets another elsewhere than where one ends and the next begins, runs straight back over
 * it, or has no length; also when finding out would take long.
 */
export function meetsItself({ points, rings, runs, boxes }: Outline): boolean {
  if ((runs.length / 2) * (runs.length / 2) > 2 * MOST_LOOKS) return true;
  let ring = 0;
  for (let i = 0; i < runs.length; i += 2) {
    while (rings[ring + 1]! <= runs[i]!) ring++;
    const [first, last] = [rings[ring]!, rings[ring + 1]! - 2];
    for (let j = i; j < runs.length; j += 2) {
      if (!boxesMeet(boxes, 2 * i, boxes, 2 * j)) continue;
      for (let s = runs[i]!; s < runs[i + 1]!; s++)
        for (let t = j === i ? s + 1 : runs[j]!; t < runs[j + 1]!; t++) {
          if (t === s + 1 && t <= last) {
            if (turnsBack(points, 2 * s, 2 * t)) return true;
          } else if (s === first && t === last) {
            if (turnsBack(points, 2 * t, 2 * s)) return true;
          } else if (sidesMeet(points, 2 * s, points, 2 * t)) return true;
        }
    }
  }
  return false;
}

/** A number that crossings within an outline do not pass, seen from the boxes of its runs; Infinity for a large one. */
export function mostCrossings({ runs, boxes }: Outline): number {
  if ((runs.length / 2) * (runs.length / 2) > 2 * MOST_LOOKS) return Infinity;
  let most = 0;
  for (let i = 0; i < runs.length; i += 2)
    for (let j = i; j < runs.length; j += 2)
      if (boxesMeet(boxes, 2 * i, boxes, 2 * j))
        most += (runs[i + 1]! - runs[i]!) * (runs[j + 1]! - runs[j]!);
  return most;
}

/** Whether boxes `i` of `a` and `j` of `b` share a point; four numbers a box. */
export const boxesMeet = (a: Float64Array, i: number, b: Float64Array, j: number): boolean =>
  a[i]! <= b[j + 2]! && b[j]! <= a[i + 2]! && a[i + 1]! <= b[j + 3]! && b[j + 1]! <= a[i + 3]!;

/** Whether the side at `t`, which begins where the one at `s` ends, runs straight back over it, or either is no side. */
function turnsBack(p: Float64Array, s: number, t: number): boolean {
  const ux = p[s + 2]! - p[s]!;
  const uy = p[s + 3]! - p[s + 1]!;
  const vx = p[t + 2]! - p[t]!;
  const vy = p[t + 3]! - p[t + 1]!;
  return ux * vy === uy * vx && ux * vx + uy * vy <= 0;
}

/** Whether the sides at `s` and `t` share a point. */
function sidesMeet(p: Float64Array, s: number, q: Float64Array, t: number): boolean {
  const ax = p[s]!;
  const ay = p[s + 1]!;
  const bx = p[s + 2]!;
  const by = p[s + 3]!;
  const cx = q[t]!;
  const cy = q[t + 1]!;
  const ex = q[t + 2]!;
  const ey = q[t + 3]!;
  if ((cx > ax && cx > bx && ex > ax && ex > bx) || (cx < ax && cx < bx && ex < ax && ex < bx)) return false;
  if ((cy > ay && cy > by && ey > ay && ey > by) || (cy < ay && cy < by && ey < ay && ey < by)) return false;
  const ux = bx - ax;
  const uy = by - ay;
  const c = ux * (cy - ay) - uy * (cx - ax);
  const e = ux * (ey - ay) - uy * (ex - ax);
  if ((c > 0 && e > 0) || (c < 0 && e < 0)) return false;
  const vx = ex - cx;
  const vy = ey - cy;
  const a = vx * (ay - cy) - vy * (ax - cx);
  const b = vx * (by - cy) - vy * (bx - cx);
  return !((a > 0 && b > 0) || (a < 0 && b < 0));
}
