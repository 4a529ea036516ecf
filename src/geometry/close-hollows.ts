import { Clipper, EndType, FillRule, JoinType } from "clipper2-ts";
import { type Ring, ringArea } from "./flatten.ts";
import { ringsOf, solidPointsOf } from "./points.ts";

/** How far arcs that fill a hollow may stray from round (µm). */
const TOLERANCE = 20;

/**
 * Polygons with their hollows filled as far as a disc of the given radius (µm) cannot enter them: morphological closing
 * (Serra 1982), grown by the radius, shrunk by it, and united with the polygons, so that nothing is ever lost. A
 * hollow whose mouth closes is filled whole, however wide it is within.
 */
export function closeHollows(rings: readonly Ring[], radius: number): Ring[] {
  const paths = solidPointsOf(rings);
  const inflate = (from: typeof paths, by: number): typeof paths =>
    Clipper.inflatePaths(from, by, JoinType.Round, EndType.Polygon, 2, TOLERANCE).map((path) =>
      path.map(({ x, y }) => ({ x: Math.round(x), y: Math.round(y) })),
    );
  const closed = Clipper.union(inflate(inflate(paths, radius), -radius), paths, FillRule.NonZero);
  return ringsOf(closed).filter((ring) => ringArea(ring) > 0);
}
