import { badShape, shown } from "../../errors/catalogue.ts";
import type { Path } from "../../geometry/path.ts";
import { type Chain, toPath } from "./chain.ts";
import { contour as chained, type Ends, spline, twin } from "./spline.ts";

/**
 * A curve in mm, as numbers: the start's x and y, then six numbers for each cubic Bézier (two controls and the end).
 * It becomes a shape with {@link brush}, and {@link branch} sets leaves along it.
 */
export type Curve = Chain;

/**
 * The smooth curve through points `x, y, x, y …` in mm, two or more: slope and curvature run on across every point,
 * as a draughtsman's bent lath does. Two points make a straight line.
 * @throws SprigwrightError `bad-shape`
 */
export const curve = (points: readonly number[]): Curve => spline(sound(points, 2, "curve"));

/** The smooth closed shape through points `x, y, x, y …` in mm, three or more. @throws SprigwrightError `bad-shape` */
export const blob = (points: readonly number[]): Path => toPath(spline(sound(points, 3, "blob"), true));

/**
 * A closed shape of smooth runs that meet in corners. Each run is points `x, y, x, y …` in mm; it starts where the one
 * before it ended, the first at its own first point. A run of one point is a straight side; an open end is closed straight.
 * @throws SprigwrightError `bad-shape`
 */
export const contour = (...runs: readonly (readonly number[])[]): Path =>
  toPath(chained(...some(runs, "contour").map((run, i) => sound(run, i === 0 ? 2 : 1, "contour"))));

/**
 * A symmetrical shape from its right half: runs, as in {@link contour}, from a point on the axis x = 0 at the top to one at
 * the bottom. On the axis the halves run smoothly into each other, unless `ends` says that the tip or the foot is pointed.
 * @throws SprigwrightError `bad-shape`
 */
export function halves(ends: Ends, ...half: readonly (readonly number[])[]): Path {
  const checked = some(half, "halves").map((run, i) => sound(run, i === 0 ? 2 : 1, "halves"));
  const [first, last] = [checked[0]!, checked[checked.length - 1]!];
  if (first[0] !== 0 || last[last.length - 2] !== 0)
    throw badShape("shapes > halves", "the half does not start and end on the axis x = 0");
  const { runs, round } = twin(ends, checked);
  return toPath(round ? spline(runs[0]!, true) : chained(...runs));
}

function some<T>(runs: readonly T[], where: string): readonly T[] {
  if (runs.length === 0) throw badShape(`shapes > ${where}`, "no points were given");
  return runs;
}

/** Points, if they are whole pairs of finite numbers and at least as many as needed. */
function sound(points: readonly number[], least: number, where: string): readonly number[] {
  const bad = points.find((v) => !Number.isFinite(v));
  if (bad !== undefined) throw badShape(`shapes > ${where}`, `a coordinate is ${shown(bad)}`);
  if (points.length % 2 !== 0 || points.length < least * 2)
    throw badShape(
      `shapes > ${where}`,
      `${points.length} numbers were given where x, y of ${least} points or more are needed`,
    );
  return points;
}
