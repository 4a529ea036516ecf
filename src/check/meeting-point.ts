import type { Outline } from "../geometry/outline.ts";

/** The point half way between two outlines where they are nearest; where their boxes overlap when they overlap (µm). */
export function meetingPoint(one: Outline, two: Outline, distance: number): readonly [x: number, y: number] {
  if (distance === 0) {
    const middle = (i: 0 | 1): number =>
      (Math.max(one.box[i]!, two.box[i]!) + Math.min(one.box[i + 2]!, two.box[i + 2]!)) / 2;
    return [middle(0), middle(1)];
  }
  const [p, q] = [nearest(one, two), nearest(two, one)];
  return p.squared <= q.squared ? p.middle : q.middle;
}

/** Where a corner of one outline comes nearest to a side of another. */
function nearest(
  one: Outline,
  two: Outline,
): { readonly squared: number; readonly middle: [number, number] } {
  let squared = Infinity;
  let middle: [number, number] = [0, 0];
  const { points, rings } = two;
  for (let k = 0; k < one.points.length; k += 2) {
    const [x, y] = [one.points[k]!, one.points[k + 1]!];
    for (let r = 0; r + 1 < rings.length; r++)
      for (let i = rings[r]! * 2; i < rings[r + 1]! * 2 - 2; i += 2) {
        const [ax, ay] = [points[i]!, points[i + 1]!];
        const [ux, uy] = [points[i + 2]! - ax, points[i + 3]! - ay];
        const length = ux * ux + uy * uy;
        const along = length > 0 ? ((x - ax) * ux + (y - ay) * uy) / length : 0;
        const t = Math.max(0, Math.min(1, along));
        const [ox, oy] = [ax + t * ux, ay + t * uy];
        const apart = (x - ox) * (x - ox) + (y - oy) * (y - oy);
        if (apart >= squared) continue;
        squared = apart;
        middle = [(x + ox) / 2, (y + oy) / 2];
      }
  }
  return { squared, middle };
}
