import type { RoleRaster } from "./role-raster.ts";

/** Farther from an edge than the middle of the pixel that is looked at there (in pixels): it lies on the same side. */
const ASIDE = 0.75;

/**
 * How long (µm) each two roles are seen to meet, as a square table: entry `a * count + b` and its mirror.
 *
 * What is seen of an edge between two roles is always an edge of the upper one. So every contour is walked in steps
 * of a pixel at most, and a step counts where the raster shows that layer on one side and a lower one on the other.
 * Lengths are those of the contours themselves, which no staircase of pixels lengthens.
 */
export function edgeLengths(
  { columns, rows, width, height, roles }: RoleRaster,
  layers: readonly (readonly Float64Array[])[],
): Float64Array {
  const count = layers.length + 1;
  const lengths = new Float64Array(count * count);
  const shows = (x: number, y: number): number =>
    roles[(Math.floor(y) & (rows - 1)) * columns + (Math.floor(x) & (columns - 1))]!;
  layers.forEach((rings, layer) => {
    const top = layer + 1;
    for (const ring of rings)
      for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
        const [x, y] = [ring[j]! / width, ring[j + 1]! / height];
        const [ux, uy] = [ring[i]! / width - x, ring[i + 1]! / height - y];
        const pixels = Math.sqrt(ux * ux + uy * uy);
        if (pixels === 0) continue;
        const [ax, ay] = [(-uy / pixels) * ASIDE, (ux / pixels) * ASIDE];
        const steps = Math.ceil(pixels);
        const [dx, dy] = [ux * width, uy * height];
        const step = Math.sqrt(dx * dx + dy * dy) / steps;
        for (let k = 0; k < steps; k++) {
          const t = (k + 0.5) / steps;
          const [mx, my] = [x + ux * t, y + uy * t];
          const one = shows(mx + ax, my + ay);
          const other = shows(mx - ax, my - ay);
          if (one === other || Math.max(one, other) !== top) continue;
          const at = top * count + Math.min(one, other);
          lengths[at] = lengths[at]! + step;
        }
      }
  });
  for (let a = 0; a < count; a++)
    for (let b = 0; b < a; b++) lengths[b * count + a] = lengths[a * count + b]!;
  return lengths;
}
