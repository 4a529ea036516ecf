// Distances between drawn outlines, by jsts (EDL-1.0 or EPL-1.0), a port of the JTS Topology Suite: no code of the
// packing engine takes part.

import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import { flatten, ringArea } from "../../../src/geometry/flatten.ts";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { placing, transformPath } from "../../../src/geometry/matrix.ts";
import { boxOf, type Path } from "../../../src/geometry/path.ts";
import type { Placement } from "../../../src/layout/layout.ts";

const factory = new GeometryFactory();

interface Placed {
  readonly coarse: unknown;
  readonly fine: () => unknown;
  readonly box: ReturnType<typeof boxOf>;
  readonly name: string;
}

/** How far outlines of the sieve stray from those that are measured (µm). */
const COARSE = 40;

/** Every outer contour as a polygon; holes count as filled. */
function polygonsOf(path: Path, tolerance: number): unknown {
  const polygons = flatten(path, tolerance)
    .filter((ring) => ringArea(ring) > 0)
    .map((ring) => {
      const corners = [];
      for (let i = 0; i < ring.length; i += 2) corners.push(new Coordinate(ring[i]!, ring[i + 1]!));
      corners.push(corners[0]);
      return factory.createPolygon(factory.createLinearRing(corners));
    });
  return factory.createMultiPolygon(polygons);
}

function place(name: string, path: Path): Placed {
  let fine: unknown;
  return {
    coarse: polygonsOf(path, COARSE),
    fine: () => {
      fine ??= polygonsOf(path, 0.5);
      return fine;
    },
    box: boxOf(path),
    name,
  };
}

const distanceOf = (p: unknown, q: unknown): number => new DistanceOp(p, q).distance() / 1000;

const apart = (p: Placed["box"], q: Placed["box"]): number =>
  Math.max(p.minX - q.maxX, q.minX - p.maxX, p.minY - q.maxY, q.minY - p.maxY);

/**
 * The smallest distance (mm) between any two drawn outlines of a layout, or between one and its own copies; each is
 * flattened within half a µm, once coarser ones show that the two may be the nearest. Copies are made one by one: every operation, then every cell that can reach.
 */
export function smallestClearance(
  placements: readonly Placement[],
  outlines: readonly Path[],
  { lattice, operations }: Arrangement,
  limit: number,
  /** Copies of a placement by an operation and a translation that may lie over it. */
  intended: (placement: Placement, image: readonly [x: number, y: number]) => boolean = () => false,
): { readonly distance: number; readonly between: string } {
  const drawn = placements.map((p) =>
    transformPath(outlines[p.motif]!, placing(p.x, p.y, p.turn, p.scale, p.flip)),
  );
  const stills = drawn.map((path, i) => place(placements[i]!.id, path));
  let best = { distance: Number.POSITIVE_INFINITY, between: "" };
  const cells = [-3, -2, -1, 0, 1, 2, 3];
  for (const [i, path] of drawn.entries())
    for (const [o, operation] of operations.entries()) {
      const image = o === 0 ? path : transformPath(path, operation);
      const home = boxOf(image);
      for (const m of cells)
        for (const n of cells) {
          const [dx, dy] = [m * lattice.a[0] + n * lattice.b[0], m * lattice.a[1] + n * lattice.b[1]];
          const box = {
            minX: home.minX + dx,
            maxX: home.maxX + dx,
            minY: home.minY + dy,
            maxY: home.maxY + dy,
          };
          let copy: Placed | undefined;
          for (const [j, still] of stills.entries()) {
            if (i === j && o === 0 && m === 0 && n === 0) continue;
            if (i === j && intended(placements[i]!, imageOf(placements[i]!, operation, dx, dy))) continue;
            if (apart(box, still.box) > Math.min(limit, best.distance) * 1000) continue;
            copy ??= place(`${placements[i]!.id} copy`, transformPath(image, [1, 0, 0, 1, dx, dy]));
            if (distanceOf(copy.coarse, still.coarse) > best.distance + (2 * COARSE) / 1000) continue;
            const distance = distanceOf(copy.fine(), still.fine());
            if (distance < best.distance) best = { distance, between: `${still.name} and ${copy.name}` };
          }
        }
    }
  return best;
}

const imageOf = (
  { x, y }: Placement,
  [a, b, c, d, e, f]: Arrangement["operations"][number],
  dx: number,
  dy: number,
): readonly [number, number] => [a * x + c * y + e + dx, b * x + d * y + f + dy];
