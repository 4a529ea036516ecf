import { intersect, subtract, unite } from "../../geometry/boolean.ts";
import { offsetPath } from "../../geometry/offset.ts";
import type { Path } from "../../geometry/path.ts";
import { mmToUm } from "../../units/length.ts";
import { checkNumbers } from "./given.ts";

/** One path, or several that count as one. */
export type Paths = Path | readonly Path[];

/** The paths united and grown by `by` mm on all sides, outer corners round. */
export function outline(paths: Paths, by: number): Path {
  checkNumbers("outline", { by });
  return offsetPath(whole(paths), mmToUm(Math.max(0, by)));
}

/** The paths united and shrunk by `by` mm on all sides; what is narrower than twice that is gone. */
export function inset(paths: Paths, by: number): Path {
  checkNumbers("inset", { by });
  return offsetPath(whole(paths), -mmToUm(Math.max(0, by)));
}

/** `back` without what `front` covers, and without a strip `gap` mm wide around it: the ground shows between. */
export function behind(back: Paths, front: Paths, gap = 0): Path {
  checkNumbers("behind", { gap });
  return subtract(whole(back), gap > 0 ? outline(front, gap) : whole(front));
}

/** What the paths share with `mask`. */
export const within = (paths: Paths, mask: Path): Path => intersect(whole(paths), mask);

const whole = (paths: Paths): Path => unite(listed(paths));

/** One path or several as a list. */
export const listed = (paths: Paths | undefined): readonly Path[] =>
  paths === undefined ? [] : Array.isArray(paths) ? (paths as readonly Path[]) : [paths as Path];
