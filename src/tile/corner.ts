import { subtract, unite } from "../geometry/boolean.ts";
import { pathOfRings } from "../geometry/clip.ts";
import type { Size } from "../geometry/lattice.ts";
import { type Matrix, movePath, transformPath } from "../geometry/matrix.ts";
import { boxOf, eachContour, joinPaths, type Path } from "../geometry/path.ts";
import type { Layer } from "./tile.ts";

/**
 * The layers of the square that joins two bands at the upper right corner of a frame.
 *
 * Above the diagonal from its lower left to its upper right corner, the band simply goes on from its left edge;
 * below, there is the mirror image about that diagonal, (x, y) → (h - y, h - x), which is a whole-number matrix.
 * So the left edge meets the band, and the lower edge meets the band mirrored about the mitre, both exactly.
 */
export function mitre(band: readonly Layer[], { width, height }: Size): Layer[] {
  const about: Matrix = [0, -1, -1, 0, height, height];
  return band.flatMap(({ role, path }) => {
    const along = unite([alongSquare(path, width, height)]);
    const above = onMitre(upperHalf(along, height), height);
    if (above.contours.length === 0) return [];
    return [Object.freeze({ role, path: unite([above, transformPath(above, about)]) })];
  });
}

/** Every copy of a band's contours that reaches into x from 0 to `height`, moved by whole widths. */
function alongSquare(path: Path, width: number, height: number): Path {
  const copies: Path[] = [];
  eachContour(path, (from, to, index) => {
    const contour = { points: path.points.subarray(from, to), contours: [path.contours[index]!] };
    const { minX, maxX } = boxOf(contour);
    for (let k = Math.floor(-maxX / width) + 1; minX + k * width < height; k++)
      copies.push(movePath(contour, k * width, 0));
  });
  return joinPaths(copies);
}

/** What lies in the square above its diagonal: all else is cut away along two straight lines. */
function upperHalf(path: Path, side: number): Path {
  if (path.contours.length === 0) return path;
  const { minX, maxX, minY, maxY } = boxOf(path);
  const far = 1000 + Math.max(side, maxX, maxY, -minX, -minY);
  const below = [side + far, -far, side + far, side + far, -far, side + far];
  const before = [-far, -far, 0, -far, 0, side + far, -far, side + far];
  const without = (from: Path, cut: readonly number[]): Path =>
    subtract(from, pathOfRings([Float64Array.from(cut)]));
  return without(without(path, below), before);
}

/** Points that rounding has left a µm beside the diagonal, put back on it, so that both halves meet there. */
function onMitre(path: Path, side: number): Path {
  const points = path.points.slice();
  for (let i = 0; i < points.length; i += 2) {
    const beside = points[i]! + points[i + 1]! - side;
    if (Math.abs(beside) <= 1) points[i] = points[i]! - beside;
  }
  return { points, contours: path.contours };
}
