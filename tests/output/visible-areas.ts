import polygonClipping, { type MultiPolygon, type Ring } from "polygon-clipping";
import { flatten } from "../../src/geometry/flatten.ts";
import { boxOf, eachContour, type Path } from "../../src/geometry/path.ts";
import type { Tile } from "../../src/tile/tile.ts";

/**
 * Share of the block in which each role is seen, the ground included, worked out by polygon-clipping from flattened contours:
 * every contour is copied to the nine blocks around, united, and cut to the block. For tiles of contours without holes.
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
    const drawn = copies(path, width, height);
    shares[role] = area(polygonClipping.intersection(rest, drawn)) / (width * height);
    rest = polygonClipping.difference(rest, drawn);
  }
  shares["ground"] = area(rest) / (width * height);
  return shares;
}

function copies(path: Path, width: number, height: number): MultiPolygon {
  const all: MultiPolygon = [];
  eachContour(path, (from, to, index) => {
    const contour = { points: path.points.subarray(from, to), contours: [path.contours[index]!] };
    const [flat] = flatten(contour, 1);
    for (const dx of [-width, 0, width])
      for (const dy of [-height, 0, height]) {
        const { minX, minY, maxX, maxY } = boxOf(contour);
        if (minX + dx > width || maxX + dx < 0 || minY + dy > height || maxY + dy < 0) continue;
        const ring: Ring = [];
        for (let i = 0; i < flat!.length; i += 2) ring.push([flat![i]! + dx, flat![i + 1]! + dy]);
        all.push([ring]);
      }
  });
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
