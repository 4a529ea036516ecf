import { unite } from "./boolean.ts";
import { flatten } from "./flatten.ts";
import { lyingOf } from "./lying.ts";
import { type Outline, outlineOfRings } from "./outline.ts";
import { areaOf, type Path } from "./path.ts";

/** How finely shapes are flattened to see whether another covers them (µm). */
const TOLERANCE = 5;

/**
 * The union of all paths, each united already: the outline of a whole drawing.
 * What lies amidst another is left out before the Béziers are united, since most of a drawing lies on its largest shapes.
 */
export function silhouette(paths: readonly Path[]): Path {
  const largest = paths.map((path, i) => ({ path, i, area: areaOf(path) }));
  largest.sort((p, q) => q.area - p.area || p.i - q.i);
  const showing: Path[] = [];
  const outlines: Outline[] = [];
  for (const { path } of largest) {
    const outline = outlineOfRings(flatten(path, TOLERANCE));
    if (outlines.some((other) => lyingOf(outline, other) === "within")) continue;
    showing.push(path);
    outlines.push(outline);
  }
  return showing.length === 1 ? showing[0]! : unite(showing);
}
