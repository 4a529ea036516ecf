import type { Size } from "../geometry/lattice.ts";
import { type Box, boxOf, eachContour, type Path } from "../geometry/path.ts";

/**
 * A path as a part of its cloth shows it: every copy, moved by whole blocks, of every contour whose box (controls
 * included) reaches into `view`, by default the block from (0, 0). Contours stay whole, in their order.
 *
 * Contours are copied one by one, a hole apart from its outline: winding numbers add, so inside the block
 * the sum over all copies is the same as if whole shapes had been copied. All moves are exact.
 */
export function copiesInBlock(
  path: Path,
  block: Size,
  view: Box = { minX: 0, minY: 0, maxX: block.width, maxY: block.height },
): Path {
  const pieces: Int32Array[] = [];
  const contours: number[] = [];
  eachContour(path, (from, to, index) => {
    const points = path.points.subarray(from, to);
    const curves = path.contours[index]!;
    const box = boxOf({ points, contours: [curves] });
    for (const dy of movesInto(box.minY, box.maxY, block.height, view.minY, view.maxY))
      for (const dx of movesInto(box.minX, box.maxX, block.width, view.minX, view.maxX)) {
        pieces.push(points.map((value, i) => value + (i % 2 === 0 ? dx : dy)));
        contours.push(curves);
      }
  });
  const points = new Int32Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    points.set(piece, at);
    at += piece.length;
  }
  return { points, contours };
}

/** Multiples of `size` by which min..max can be moved to overlap low..high: 0 first, then rising. */
export function movesInto(min: number, max: number, size: number, low: number, high: number): number[] {
  const moves: number[] = [];
  const last = Math.ceil((high - min) / size) - 1;
  for (let k = Math.floor((low - max) / size) + 1; k <= last; k++) moves.push(k * size);
  return moves.sort((p, q) => Number(p !== 0) - Number(q !== 0) || p - q);
}
