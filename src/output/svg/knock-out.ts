import { intersect, subtractAll, unite } from "../../geometry/boolean.ts";
import type { Size } from "../../geometry/lattice.ts";
import { reversePath } from "../../geometry/matrix.ts";
import { type Box, boxOf, emptyPath, joinPaths, type Path } from "../../geometry/path.ts";
import type { Layer, Tile } from "../../tile/tile.ts";
import { copiesInBlock } from "../copies.ts";
import { clustersOf, islandsOf, meetings } from "./islands.ts";

/**
 * A tile's layers, each without what lies above it, across the edges of the block too: no two share any area. Curves
 * stay curves. Shapes that touch nothing above keep their points.
 */
export function knockOut({ layers, block }: Pick<Tile, "layers" | "block">): Layer[] {
  const out: Layer[] = [];
  let above: Path = emptyPath;
  for (const { role, path } of [...layers].reverse()) {
    out.unshift({ role, path: without(path, above, block) });
    above = joinPaths([path, above]);
  }
  return out;
}

function without(path: Path, above: Path, block: Size): Path {
  if (path.contours.length === 0 || above.contours.length === 0) return path;
  const own = islandsOf(path);
  const cutters = islandsOf(copiesInBlock(above, block, boxOf(path)));
  const cuts = own.map((): Path[] => []);
  meetings(own, cutters, (i, j) => cuts[i]!.push(cutters[j]!.path));
  return joined(
    own.map((island, i) => (cuts[i]!.length === 0 ? island.path : subtractAll(island.path, cuts[i]!))),
  );
}

/** What is left of the ground in a view (µm): the view itself, with a hole for all that lies on it. */
export function groundLeft({ layers, block }: Pick<Tile, "layers" | "block">, view: Size): Path {
  const sheet: Box = { minX: 0, minY: 0, maxX: view.width, maxY: view.height };
  const rectangle = rectangleOf(view);
  const all = joinPaths(layers.map(({ path }) => path));
  const holes = clustersOf(copiesInBlock(all, block, sheet)).map(({ path, box }) => {
    const united = unite([path]);
    const inside = box.minX >= 0 && box.minY >= 0 && box.maxX <= view.width && box.maxY <= view.height;
    return reversePath(inside ? united : intersect(united, rectangle));
  });
  return joined([rectangle, ...holes]);
}

function rectangleOf({ width, height }: Size): Path {
  const corners = [0, 0, width, 0, width, height, 0, height];
  const points = [0, 1, 2, 3].flatMap((i) => {
    const [x, y, u, v] = [0, 1, 2, 3].map((k) => corners[(2 * i + k) % 8]!);
    return [x!, y!, x!, y!, u!, v!];
  });
  return { points: Int32Array.from(points), contours: [4] };
}

const joined = (paths: readonly Path[]): Path => {
  const some = paths.filter((path) => path.contours.length > 0);
  return some.length === 0 ? emptyPath : joinPaths(some);
};
