import type { Size } from "../geometry/lattice.ts";
import { boxOf, eachContour, type Path } from "../geometry/path.ts";

/**
 * A path as one block of its repeat shows it: every copy, moved by whole blocks, of every contour whose box
 * (controls included) reaches into the block from (0, 0) to `block`. Contours stay whole, in their order.
 *
 * Contours are copied one by one, a hole apart from its outline: winding numbers add, so inside the block
 * the sum over all copies is the same as if whole shapes had been copied. All moves are exact.
 */
export function copiesInBlock(path: Path, block: Size): Path {
  const pieces: Int32Array[] = [];
  const contours: number[] = [];
  eachContour(path, (from, to, index) => {
    const points = path.points.subarray(from, to);
    const curves = path.contours[index]!;
    const box = boxOf({ points, contours: [curves] });
    for (const dy of movesInto(box.minY, box.maxY, block.height))
      for (const dx of movesInto(box.minX, box.maxX, block.width)) {
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

/** Multiples of `size` by which min..max can be moved to overlap 0..`size`: 0 first, then rising. */
function movesInto(min: number, max: number, size: number): number[] {
  const moves: number[] = [];
  const last = Math.ceil((size - min) / size) - 1;
  for (let k = Math.floor(-max / size) + 1; k <= last; k++) moves.push(k * size);
  return moves.sort((p, q) => Number(p !== 0) - Number(q !== 0) || p - q);
}
