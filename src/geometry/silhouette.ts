import { unite } from "./boolean.ts";
import { ringsArea, subtractRings, uniteRings } from "./clip.ts";
import { flatten, type Ring } from "./flatten.ts";
import { areaOf, type Path } from "./path.ts";

/** How finely shapes are flattened to see whether others cover them (µm). */
const TOLERANCE = 5;

/** A shape shows when more than this of it does (µm²). */
const DUST = 100;

/**
 * The union of all paths, each united already: the outline of a whole drawing.
 * What others cover is left out before the Béziers are united, since most of a drawing lies on its largest shapes.
 */
export function silhouette(paths: readonly Path[]): Path {
  const largest = paths.map((path, i) => ({ path, i, area: areaOf(path) }));
  largest.sort((p, q) => q.area - p.area || p.i - q.i);
  const showing: Path[] = [];
  let cover: Ring[] = [];
  for (const { path } of largest) {
    const rings = flatten(path, TOLERANCE);
    if (cover.length > 0 && ringsArea(subtractRings(rings, cover)) <= DUST) continue;
    showing.push(path);
    cover = uniteRings([...cover, ...rings]);
  }
  return showing.length === 1 ? showing[0]! : unite(showing);
}
