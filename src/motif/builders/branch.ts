import { badShape, shown } from "../../errors/catalogue.ts";
import { transformPath } from "../../geometry/matrix.ts";
import type { Path } from "../../geometry/path.ts";
import { mmToUm } from "../../units/length.ts";
import { walk } from "./chain.ts";
import type { Curve } from "./curve.ts";
import { checkOptions } from "./given.ts";
import { measured } from "./measured.ts";
import { listed, type Paths } from "./offset.ts";
import { mix, turned } from "./vector.ts";

/** Where one leaf of a branch grows. */
export interface LeafPlace {
  /** Its number from the foot, starting at 0; two that face each other have the same. */
  readonly index: number;
  /** How far along the leafy part it is, 0 (lowest) to 1 (highest). */
  readonly share: number;
  /** -1 on the left of the stem as it grows, 1 on the right. */
  readonly side: -1 | 1;
}

/** How leaves grow along a curve. */
export interface BranchOptions {
  /** The leaf for a place: drawn upright in mm, its foot on the origin and its tip up; on the left it is mirrored. */
  readonly leaf: (place: LeafPlace) => Paths;
  /** Places along the curve, 1 to 400. */
  readonly count: number;
  /** First and last place as shares of the curve's length. Default 0.12 and 0.95. */
  readonly from?: number;
  readonly to?: number;
  /** Angle between stem and leaf in turns, or a function of the share along the leafy part. Default 0.13. */
  readonly angle?: number | ((share: number) => number);
  /** One leaf at each place, right and left in turn (default), or two that face each other. */
  readonly arrangement?: "alternate" | "opposite";
}

/**
 * Leaves, or anything else, along a curve, evenly by its length. Draw the stem itself with `brush`.
 * @throws SprigwrightError `bad-shape`: a count that is not a whole number from 1 to 400
 */
export function branch(along: Curve, options: BranchOptions): Path[] {
  checkOptions("branch", options, ["leaf", "count", "from", "to", "angle", "arrangement"]);
  const { leaf, count, from = 0.12, to = 0.95, angle = 0.13, arrangement = "alternate" } = options;
  if (!Number.isInteger(count) || count < 1 || count > 400)
    throw badShape("shapes > branch", `${shown(count)} is not a number of places from 1 to 400`);
  const place = measured(along);
  return Array.from({ length: count }, (_, index) => {
    const share = count === 1 ? 0.5 : index / (count - 1);
    const { at, way } = walk(along, place(mix(from, to, share)));
    const sides = arrangement === "opposite" ? ([-1, 1] as const) : ([index % 2 === 0 ? 1 : -1] as const);
    return sides.flatMap((side) => {
      const [s, up] = turned(way, side * (typeof angle === "number" ? angle : angle(share)));
      return listed(leaf({ index, share, side })).map((path) =>
        transformPath(path, [-up * side, s * side, -s, -up, mmToUm(at[0]), mmToUm(at[1])]),
      );
    });
  }).flat();
}
