import polygonClipping, { type MultiPolygon, type Ring } from "polygon-clipping";
import { flatten, ringArea as windingOf } from "../../src/geometry/flatten.ts";
import { boxOf, eachContour, type Path } from "../../src/geometry/path.ts";
import type { Tile } from "../../src/tile/tile.ts";

/** How far sides may stray from their curves (µm): of a seed of half a millimetre, 0.1 %. */
const FINENESS = 0.25;

/**
 * Share of the block in which each role is seen, the ground included, worked out by polygon-clipping from flattened contours:
 * every contour is copied to the nine blocks around, outlines are united, holes taken out, and what is left cut to the block.
 * For tiles in which no shape lies in a hole of its own role.
 */
export function visibleAreas(tile: Pick<Tile, "layers" | "block">): Record<string, number> {
  const { width, height } = tile.block;
  const block: MultiPolygon = [
    [
      [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ],
    ],
  ];
  const shares: Record<string, number> = {};
  let rest = block;
  for (const { role, path } of [...tile.layers].reverse()) {
    const holes = copies(path, width, height, -1);
    const outlines = copies(path, width, height, 1);
    const drawn = holes.length === 0 ? outlines : polygonClipping.difference(outlines, holes);
    shares[role] = area(polygonClipping.intersection(rest, drawn)) / (width * height);
    rest = polygonClipping.difference(rest, drawn);
  }
  shares["ground"] = area(rest) / (width * height);
  return shares;
}

/** Contours that run this way round, and their copies. */
function copies(path: Path, width: number, height: number, way: 1 | -1): MultiPolygon {
  const all: MultiPolygon = [];
  eachContour(path, (from, to, index) => {
    const contour = { points: path.points.subarray(from, to), contours: [path.contours[index]!] };
    const [flat] = flatten(contour, FINENESS);
    if (Math.sign(windingOf(flat!)) !== way) return;
    for (const dx of [-width, 0, width])
      for (const dy of [-height, 0, height]) {
        const { minX, minY, maxX, maxY } = boxOf(contour);
        if (minX + dx > width || maxX + dx < 0 || minY + dy > height || maxY + dy < 0) continue;
        const ring: Ring = [];
        for (let i = 0; i < flat!.length; i += 2) ring.push([flat![i]! + dx, flat![i + 1]! + dy]);
        all.push([ring]);
      }
  });
  if (all.length === 0) return [];
  const [first, ...more] = all;
  return polygonClipping.union([first!], ...more.map((one) => [one]));
}

const area = (polygons: MultiPolygon): number =>
  polygons.reduce(
    (sum, [outer, ...holes]) =>
      sum + Math.abs(ringArea(outer!)) - holes.reduce((all, hole) => all + Math.abs(ringArea(hole)), 0),
    0,
  );

const ringArea = (ring: Ring): number =>
  ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length]!;
    return sum + (x * v - u * y) / 2;
  }, 0);
