import { Clipper, EndType, JoinType } from "clipper2-ts";
import { uniteRings } from "./clip.ts";
import { fitRing } from "./fit.ts";
import { flatten, type Ring } from "./flatten.ts";
import { emptyPath, joinPaths, type Path } from "./path.ts";

/** How finely curves are flattened before they are offset, and how near the fitted curves stay (µm). */
const [FINENESS, NEARNESS] = [3, 3];

/** How far points may stand out and yet be left out (µm). */
const NOISE = 1.5;

/**
 * A united path grown (`by` above 0) or shrunk by µm on all sides, outer corners round, as Béziers within about 8 µm
 * of the true parallel curve. What shrinks can fall apart or vanish: the path is then several contours, or empty.
 */
export function offsetPath(path: Path, by: number): Path {
  const rings = uniteRings(flatten(path, FINENESS))
    .filter((ring) => ring.length >= 6)
    .map(asPoints);
  const moved = Clipper.inflatePaths(rings, by, JoinType.Round, EndType.Polygon, 2, FINENESS);
  // Noise of rounding would be taken for corners: points that stand out by less are left out first.
  const fitted = Clipper.ramerDouglasPeuckerPaths(moved, NOISE)
    .map((ring): Ring => Float64Array.from(ring.flatMap(({ x, y }) => [Math.round(x), Math.round(y)])))
    .filter((ring) => ring.length >= 6)
    .map((ring) => fitRing(ring, NEARNESS));
  return fitted.length === 0 ? emptyPath : joinPaths(fitted);
}

function asPoints(ring: Ring): { x: number; y: number }[] {
  const points: { x: number; y: number }[] = [];
  for (let i = 0; i < ring.length; i += 2)
    points.push({ x: Math.round(ring[i]!), y: Math.round(ring[i + 1]!) });
  return points;
}
