// Polygons and distances of jsts (EDL-1.0 or EPL-1.0), a port of the JTS Topology Suite.
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";

const factory = new GeometryFactory();

/** A polygon from rings (x, y, x, y …): the first is the shell, the others are its holes. */
export function polygonOf(rings: readonly ArrayLike<number>[]): unknown {
  const [shell, ...holes] = rings.map((ring) => {
    const count = ring.length / 2;
    const points = Array.from({ length: count + 1 }, (_, i) => {
      const k = (i % count) * 2;
      return new Coordinate(ring[k], ring[k + 1]);
    });
    return factory.createLinearRing(points);
  });
  return factory.createPolygon(shell, holes);
}

/** Least distance of two filled polygons. */
export const jstsDistance = (a: unknown, b: unknown): number => DistanceOp.distance(a, b);

/** From the nearest point of the second of two filled polygons to that of the first. */
export function jstsNearest(a: unknown, b: unknown): readonly [x: number, y: number] {
  const [p, q] = DistanceOp.nearestPoints(a, b) as { readonly x: number; readonly y: number }[];
  return [p!.x - q!.x, p!.y - q!.y];
}
