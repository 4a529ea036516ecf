import { subtract, unite } from "../geometry/boolean.ts";
import { pathOfRings } from "../geometry/clip.ts";
import type { Size } from "../geometry/lattice.ts";
import { type Matrix, movePath, transformPath } from "../geometry/matrix.ts";
import { boxOf, eachContour, joinPaths, type Path } from "../geometry/path.ts";
import type { Layer } from "./tile.ts";

/** Which upper corner of a frame. */
export type Side = "left" | "right";

/**
 * The layers of the square that joins two bands at an upper corner of a frame, with the side of the band's height h.
 *
 * Above the diagonal that runs down from the outer corner, the band goes on as it left off: from its right end in the
 * right corner, before its left end in the left one. Below the diagonal there is the mirror image about it,
 * (x, y) → (h - y, h - x) or (y, x), a whole-number matrix. So both edges meet what they join exactly.
 */
export function mitre(band: readonly Layer[], { width, height }: Size, side: Side): Layer[] {
  const about: Matrix = side === "right" ? [0, -1, -1, 0, height, height] : [0, 1, 1, 0, 0, 0];
  return band.flatMap(({ role, path }) => {
    const along = unite([alongSquare(path, width, height, side)]);
    const above = onMitre(upperHalf(along, height, side), height, side);
    if (above.contours.length === 0) return [];
    return [Object.freeze({ role, path: unite([above, transformPath(above, about)]) })];
  });
}

/** Every copy of a band's contours that reaches into the square, where the band's start or its end is at the edge. */
function alongSquare(path: Path, width: number, height: number, side: Side): Path {
  const start = side === "right" ? 0 : height;
  const copies: Path[] = [];
  eachContour(path, (from, to, index) => {
    const contour = { points: path.points.subarray(from, to), contours: [path.contours[index]!] };
    const { minX, maxX } = boxOf(contour);
    for (let k = Math.floor((-maxX - start) / width) + 1; minX + start + k * width < height; k++)
      copies.push(movePath(contour, start + k * width, 0));
  });
  return joinPaths(copies);
}

/** What lies in the square above its diagonal: all else is cut away along two straight lines. */
function upperHalf(path: Path, size: number, side: Side): Path {
  if (path.contours.length === 0) return path;
  const { minX, maxX, minY, maxY } = boxOf(path);
  const far = 1000 + Math.max(size, maxX, maxY, -minX, -minY);
  const [low, high] = [-far, size + far];
  const below = side === "right" ? [high, low, high, high, low, high] : [low, low, high, high, low, high];
  const beside =
    side === "right"
      ? [low, low, 0, low, 0, high, low, high]
      : [size, low, high, low, high, high, size, high];
  const without = (from: Path, cut: readonly number[]): Path =>
    subtract(from, pathOfRings([Float64Array.from(cut)]));
  return without(without(path, below), beside);
}

/** Points that rounding has left a µm beside the diagonal, put back on it, so that both halves meet there. */
function onMitre(path: Path, size: number, side: Side): Path {
  const points = path.points.slice();
  for (let i = 0; i < points.length; i += 2) {
    const [x, y] = [points[i]!, points[i + 1]!];
    const on = side === "right" ? size - y : y;
    if (Math.abs(x - on) <= 1) points[i] = on;
  }
  return { points, contours: path.contours };
}
