import { Clipper, EndType, JoinType } from "clipper2-ts";
import type { Ring } from "./flatten.ts";
import { ringsOf, solidPointsOf } from "./points.ts";

/**
 * United polygons grown by `by` µm on all sides (holes shrink), corners round to within `tolerance` µm.
 * Positive `by` only: what shrinks can fall apart, and then needs looking after.
 */
export function growRings(rings: readonly Ring[], by: number, tolerance: number): Ring[] {
  return ringsOf(
    Clipper.inflatePaths(solidPointsOf(rings), by, JoinType.Round, EndType.Polygon, 2, tolerance),
  );
}
