import { extentOf } from "./extent.ts";
import { isBox } from "./frame.ts";
import { leavesOf, type Mark, type Painted } from "./journey.ts";

/** How far a page may fall short of what a viewer shows, as a share of it. */
const SLACK = 0.002;

/**
 * The mark that is a drawing's paper: the lowest of all, a plain box over all that a viewer shows, with something else
 * on it. Undefined where there is none.
 */
export function paperOf(
  marks: readonly Mark[],
  page: { readonly width: number; readonly height: number },
): Painted | undefined {
  const [lowest, ...others] = marks.flatMap(leavesOf);
  if (!lowest || others.length === 0 || lowest !== marks[0] || !isBox(lowest.outline)) return undefined;
  const { minX, minY, maxX, maxY } = extentOf([lowest.outline]);
  const [x, y] = [SLACK * page.width, SLACK * page.height];
  return minX <= x && minY <= y && maxX >= page.width - x && maxY >= page.height - y ? lowest : undefined;
}
