import type { Path64, Paths64 } from "clipper2-ts";
import type { Ring } from "./flatten.ts";

/** A ring's points as the polygon engine reads them, rounded to whole numbers: the engine itself does not round. */
export function pointsOf(ring: Ring): Path64 {
  const points: Path64 = [];
  for (let i = 0; i < ring.length; i += 2)
    points.push({ x: Math.round(ring[i]!), y: Math.round(ring[i + 1]!) });
  return points;
}

/** The points of polygons of three corners and more: a small loop flattens to one or two, which the engine does not survive. */
export const solidPointsOf = (rings: readonly Ring[]): Paths64 =>
  rings.filter((ring) => ring.length >= 6).map(pointsOf);

/** Rings of whole numbers of what the engine gave back. */
export const ringsOf = (paths: Paths64): Ring[] =>
  paths.map((path) => {
    const ring = new Float64Array(path.length * 2);
    path.forEach((point, i) => {
      ring[2 * i] = Math.round(point.x);
      ring[2 * i + 1] = Math.round(point.y);
    });
    return ring;
  });
