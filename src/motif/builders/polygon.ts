import { badShape, shown } from "../../errors/catalogue.ts";
import type { Path } from "../../geometry/path.ts";
import { pen } from "../../geometry/pen.ts";
import { toPath } from "./chain.ts";
import { checkNumbers } from "./given.ts";
import { softened } from "./spline.ts";
import { heading } from "./vector.ts";

/**
 * A regular polygon about the origin, a corner up.
 * @param sides how many, 3 to 120
 * @param reach from the middle to a corner, in mm
 * @param round how far before and after a corner it is rounded, in mm, at most half of a side
 * @throws SprigwrightError `bad-shape`
 */
export function polygon(sides: number, reach: number, round = 0): Path {
  if (!Number.isInteger(sides) || sides < 3 || sides > 120)
    throw badShape("shapes > polygon", `${shown(sides)} is not a number of sides from 3 to 120`);
  checkNumbers("polygon", { reach, round });
  const points = Array.from({ length: sides }, (_, k) => heading(k / sides)).flatMap(([x, y]) => [
    x * reach,
    y * reach,
  ]);
  if (round > 0) return toPath(softened(points, round));
  const draw = pen().moveTo(points[0]!, points[1]!);
  for (let i = 2; i < points.length; i += 2) draw.lineTo(points[i]!, points[i + 1]!);
  return draw.path();
}
