import { Clipper, EndType, JoinType } from "clipper2-ts";
import type { Ring } from "./flatten.ts";

/**
 * United polygons grown by `by` µm on all sides (holes shrink), corners round to within `tolerance` µm.
 * Positive `by` only: what shrinks can fall apart, and then needs looking after.
 */
export function growRings(rings: readonly Ring[], by: number, tolerance: number): Ring[] {
  // A small loop flattens to a point or two, which the engine does not survive.
  const solid = rings.filter((ring) => ring.length >= 6);
  const paths = solid.map((ring) => {
    const path: { x: number; y: number }[] = [];
    for (let i = 0; i < ring.length; i += 2)
      path.push({ x: Math.round(ring[i]!), y: Math.round(ring[i + 1]!) });
    return path;
  });
  const grown = Clipper.inflatePaths(paths, by, JoinType.Round, EndType.Polygon, 2, tolerance);
  return grown.map((path) => Float64Array.from(path.flatMap(({ x, y }) => [Math.round(x), Math.round(y)])));
}
