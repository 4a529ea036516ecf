import { subtract } from "../geometry/boolean.ts";
import type { Motif, Shape } from "../motif/motif.ts";

/**
 * A motif's shapes as the pattern's roles will stack them, without changing the picture: where a role that
 * lies on top in the motif is painted earlier in the pattern, the shape that would cover it is cut away there.
 */
export function stackShapes(motif: Motif, roles: readonly string[]): Shape[] {
  const rank = new Map(roles.map((role, i) => [role, i]));
  const { shapes } = motif;
  return shapes.flatMap((shape, i) => {
    let { path } = shape;
    for (const above of shapes.slice(i + 1))
      if (rank.get(above.role)! < rank.get(shape.role)!) path = subtract(path, above.path);
    if (path === shape.path) return [shape];
    // What is covered altogether is gone: an empty path has no place in the order of a layer.
    return path.contours.length === 0 ? [] : [{ role: shape.role, path }];
  });
}
