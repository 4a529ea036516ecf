import type { Ring } from "../../geometry/flatten.ts";
import type { Box } from "../../geometry/path.ts";

/** An upright box as a polygon. */
export const boxRing = ({ minX, minY, maxX, maxY }: Box): Ring =>
  Float64Array.of(minX, minY, maxX, minY, maxX, maxY, minX, maxY);

/** A box with `by` µm more on every side. */
export const grownBox = ({ minX, minY, maxX, maxY }: Box, by: number): Box => ({
  minX: minX - by,
  minY: minY - by,
  maxX: maxX + by,
  maxY: maxY + by,
});

/** The box around polygons and `by` µm more. */
export function boxAround(rings: readonly Ring[], by: number): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of rings)
    for (let i = 0; i < ring.length; i += 2) {
      minX = Math.min(minX, ring[i]!);
      maxX = Math.max(maxX, ring[i]!);
      minY = Math.min(minY, ring[i + 1]!);
      maxY = Math.max(maxY, ring[i + 1]!);
    }
  return { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
}
