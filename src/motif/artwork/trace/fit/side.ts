import { cross, minus, type Point, unit } from "./point.ts";

/** A straight line along a side of an outline, pointing onwards. */
export interface Side {
  readonly middle: Point;
  readonly way: Point;
}

/** The straight line that is nearest to points at even steps. */
export function sideThrough(points: readonly Point[]): Side {
  const count = points.length;
  let [x, y, sx, sy] = [0, 0, 0, 0];
  points.forEach((p, i) => {
    const k = i - (count - 1) / 2;
    x += p[0];
    y += p[1];
    sx += k * p[0];
    sy += k * p[1];
  });
  return { middle: [x / count, y / count], way: unit([sx, sy], minus(points[count - 1]!, points[0]!)) };
}

/** Where two lines meet; undefined when they hardly turn. */
export function meeting(one: Side, two: Side): Point | undefined {
  const turn = cross(one.way, two.way);
  if (Math.abs(turn) < 0.2) return undefined;
  const t = cross(minus(two.middle, one.middle), two.way) / turn;
  return [one.middle[0] + one.way[0] * t, one.middle[1] + one.way[1] * t];
}
