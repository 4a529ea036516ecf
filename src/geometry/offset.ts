import { Clipper, EndType, JoinType } from "clipper2-ts";
import { uniteRings } from "./clip.ts";
import { fitRing } from "./fit.ts";
import { flatten } from "./flatten.ts";
import { emptyPath, joinPaths, type Path } from "./path.ts";
import { ringsOf, solidPointsOf } from "./points.ts";

/** How finely curves are flattened before they are offset, and how near the fitted curves stay (µm). */
const [FINENESS, NEARNESS] = [3, 3];

/** How far points may stand out and yet be left out (µm). */
const NOISE = 1.5;

/**
 * A united path grown (`by` above 0) or shrunk by µm on all sides, outer corners round, as Béziers within about 8 µm
 * of the true parallel curve. What shrinks can fall apart or vanish: the path is then several contours, or empty.
 */
export function offsetPath(path: Path, by: number): Path {
  const rings = solidPointsOf(uniteRings(flatten(path, FINENESS)));
  const moved = Clipper.inflatePaths(rings, by, JoinType.Round, EndType.Polygon, 2, FINENESS);
  // Noise of rounding would be taken for corners: points that stand out by less are left out first.
  const fitted = ringsOf(Clipper.ramerDouglasPeuckerPaths(moved, NOISE))
    .filter((ring) => ring.length >= 6)
    .map((ring) => fitRing(ring, NEARNESS));
  return fitted.length === 0 ? emptyPath : joinPaths(fitted);
}
