// Areas and motifs as polygons of jsts (EDL-1.0 or EPL-1.0), a port of the JTS Topology Suite: copies of an area are
// made and united there, and the judge is its point location and its distance operation. No code of the packing engine takes part.

import SimplePointInAreaLocator from "jsts/org/locationtech/jts/algorithm/locate/SimplePointInAreaLocator.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import UnaryUnionOp from "jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js";
import { flatten, ringArea } from "../../../src/geometry/flatten.ts";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { placing, transformPath } from "../../../src/geometry/matrix.ts";
import { boxOf, type Path } from "../../../src/geometry/path.ts";
import type { Placement } from "../../../src/layout/layout.ts";

const factory = new GeometryFactory();

interface Geometry {
  getBoundary(): Geometry;
  getCoordinate(): unknown;
}

/** Outer contours as polygons. */
function polygonsOf(path: Path): unknown[] {
  return flatten(path, 2)
    .filter((ring) => ringArea(ring) > 0)
    .map((ring) => {
      const corners = [];
      for (let i = 0; i < ring.length; i += 2) corners.push(new Coordinate(ring[i]!, ring[i + 1]!));
      corners.push(corners[0]);
      return factory.createPolygon(factory.createLinearRing(corners));
    });
}

/** All copies of an area near the unit, united: every operation, then cells of the lattice all around. */
export function copiesOf(area: Path, { lattice, operations, unit }: Arrangement, around: number): Geometry {
  const polygons: unknown[] = [];
  const cells = Array.from({ length: 13 }, (_, k) => k - 6);
  for (const operation of operations) {
    const image = transformPath(area, operation);
    for (const m of cells)
      for (const n of cells) {
        const [dx, dy] = [m * lattice.a[0] + n * lattice.b[0], m * lattice.a[1] + n * lattice.b[1]];
        const copy = transformPath(image, [1, 0, 0, 1, dx, dy]);
        const { minX, minY, maxX, maxY } = boxOf(copy);
        const far = around * 1000;
        if (maxX < -far || maxY < -far || minX > unit.width + far || minY > unit.height + far) continue;
        polygons.push(...polygonsOf(copy));
      }
  }
  return UnaryUnionOp.union(factory.createGeometryCollection(polygons)) as Geometry;
}

/** jsts's code for a point within. */
const INTERIOR = 0;

/** Distance (mm) of a placement from the boundary of an area, and on which side of it the placement lies. */
export function lieOf(
  p: Placement,
  outline: Path,
  area: Geometry,
): { readonly side: "inside" | "outside" | "across"; readonly distance: number } {
  const polygons = polygonsOf(transformPath(outline, placing(p.x, p.y, p.turn, p.scale, p.flip)));
  const motif = factory.createMultiPolygon(polygons);
  const distance = new DistanceOp(motif, area.getBoundary()).distance() / 1000;
  // Where no boundary is met, one point of each piece says where all of it lies.
  const within = polygons.map(
    (polygon) => SimplePointInAreaLocator.locate((polygon as Geometry).getCoordinate(), area) === INTERIOR,
  );
  if (distance === 0 || new Set(within).size > 1) return { side: "across", distance };
  return { side: within[0] ? "inside" : "outside", distance };
}
