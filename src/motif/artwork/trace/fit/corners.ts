import { angle, dot, minus, type Point, size } from "./point.ts";
import { meeting, type Side, sideThrough } from "./side.ts";

/** A corner of an outline. */
export interface Corner {
  /** Index of the point that is nearest to it. */
  readonly at: number;
  /** Where its two sides meet: outside the outline by what the pixels have rounded off. */
  readonly point: Point;
  /** Points on either side of it that are rounded off. */
  readonly skip: number;
  /** Its sides, as far as they were looked at. */
  readonly before: Side;
  readonly after: Side;
}

/** Points from a corner that pixels round off, and up to which its sides are looked at (steps of half a pixel). */
const NEAR = 3;
const REACH = 9;

/** Least turn at a corner, in radians (29°), and least that the bend of its sides does not explain (20°). */
const TURN = 0.5;
const SUDDEN = 0.35;

/** How far a right angle is rounded off, in pixels, where edges are as sharp as can be: measured on wedges. */
const ROUNDED = 0.62;
/** How much farther may still be a corner: beyond, it is a round end. */
const SLACK = 1.5;

/**
 * Corners of an outline of even points. One is where the line turns at once: more than its sides go on to bend. The
 * sides are met outside, as far as the pixels explain; what is rounder is no corner but a tight curve.
 * @param softness how much wider than a pixel the picture's edges are; 1 is sharp
 */
export function cornersOf(points: readonly Point[], softness: number): Corner[] {
  const n = points.length;
  const reach = Math.min(REACH, Math.floor(n / 6));
  if (reach < 5) return [];
  const near = Math.min(NEAR, reach - 3);
  const at = (i: number): Point => points[(i + n) % n]!;
  const turns = new Float64Array(n);
  for (let i = 0; i < n; i++) turns[i] = suddenTurn(at, i, near, reach);
  const corners: Corner[] = [];
  for (let i = 0; i < n; i++) {
    const own = Math.abs(turns[i]!);
    if (own === 0 || !isPeak(turns, i, own, near + 1)) continue;
    const corner = sharpened(at, i, near, reach, softness);
    if (corner) corners.push({ ...corner, at: i });
  }
  return corners;
}

/** The turn at a point when it is a corner's, else 0. */
function suddenTurn(at: (i: number) => Point, i: number, near: number, reach: number): number {
  const half = Math.round((near + reach) / 2);
  const before = minus(at(i - half), at(i - reach));
  const arriving = minus(at(i - near), at(i - half));
  const leaving = minus(at(i + half), at(i + near));
  const after = minus(at(i + reach), at(i + half));
  const turn = angle(arriving, leaving);
  if (Math.abs(turn) < TURN) return 0;
  // The bend of the sides, a step, times the steps from the middle of one chord to that of the other.
  const bend = (angle(before, arriving) + angle(leaving, after)) / (reach - near);
  const steps = half + near;
  const sudden = Math.abs(turn) - Math.max(0, Math.sign(turn) * bend * steps);
  return sudden > SUDDEN ? turn : 0;
}

/** Whether no point within `reach` turns more; of equals the first. */
function isPeak(turns: Float64Array, i: number, own: number, reach: number): boolean {
  const n = turns.length;
  for (let k = 1; k <= reach; k++) {
    if (Math.abs(turns[(i + k) % n]!) > own) return false;
    if (Math.abs(turns[(i - k + n) % n]!) >= own) return false;
  }
  return true;
}

/** Where the sides of a corner meet, if that is no farther outside than pixels explain. */
function sharpened(
  at: (i: number) => Point,
  i: number,
  near: number,
  reach: number,
  softness: number,
): Omit<Corner, "at"> | undefined {
  const through = (from: number): Side =>
    sideThrough(Array.from({ length: reach - near + 1 }, (_, k) => at(from + k)));
  const [before, after] = [through(i - reach), through(i + near)];
  const straight = dot(before.way, after.way);
  const point = meeting(before, after);
  // Nearly straight back: the end of a hair. It stays where it was found.
  if (!point) return straight < 0 ? { point: at(i), skip: 1, before, after } : undefined;
  let gap = Infinity;
  for (let k = i - near; k <= i + near; k++) gap = Math.min(gap, size(minus(point, at(k))));
  // The sharper a corner, the more it loses: by the cotangent of half its inner angle.
  const cotangent = Math.sqrt(Math.max(0, 1 - straight) / Math.max(1e-6, 1 + straight));
  const most = ROUNDED * softness * SLACK * cotangent + 0.25;
  return gap <= most ? { point, skip: near, before, after } : undefined;
}
