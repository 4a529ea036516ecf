import type { Band } from "./band.ts";
import type { Edges } from "./edges.ts";
import { PARTS } from "./grid.ts";

/**
 * Adds the sides of one bucket to the sums of a band whose first row is `top`.
 *
 * Every side adds, in every row it passes, its height times what lies to its right (signed-area accumulation).
 * Running sums along a row then are the exact area of the polygon in each pixel. Where a side crosses a line
 * of pixels depends on the side alone, not on its direction or its place: shapes that share a side leave
 * no gap, and moving a shape by whole pixels moves its pixels.
 */
export function addSides(band: Band, edges: Edges, bucket: number, top: number): void {
  const { sides, order, starts } = edges;
  const { width, words, sums, touched } = band;
  const bottom = top + band.rows - 1;
  for (let entry = starts[bucket]!; entry < starts[bucket + 1]!; entry++) {
    const at = order[entry]! * 4;
    const down = sides[at + 1]! < sides[at + 3]!;
    const x0 = sides[down ? at : at + 2]!;
    const y0 = sides[down ? at + 1 : at + 3]!;
    const x1 = sides[down ? at + 2 : at]!;
    const y1 = sides[down ? at + 3 : at + 1]!;
    const dx = x1 - x0;
    const dy = y1 - y0;
    const first = Math.max(y0 >> 8, top);
    const last = Math.min((y1 - 1) >> 8, bottom);
    let from = first * PARTS <= y0 ? x0 : (x0 + Math.floor(((first * PARTS - y0) * dx) / dy)) | 0;
    let y = Math.max(y0, first * PARTS);
    for (let row = first; row <= last; row++) {
      const end = Math.min(y1, (row + 1) * PARTS);
      const to = end === y1 ? x1 : (x0 + Math.floor(((end - y0) * dx) / dy)) | 0;
      const height = down ? end - y : y - end;
      const column = from >> 8;
      if (column === to >> 8 && column >= 0 && column < width - 1) {
        const right = (from & 255) + (to & 255);
        const cell = (row - top) * width + column;
        sums[cell] = sums[cell]! + height * (512 - right);
        sums[cell + 1] = sums[cell + 1]! + height * right;
        const word = (row - top) * words + (column >> 5);
        touched[word] = touched[word]! | (3 << (column & 31));
        if ((column & 31) === 31) touched[word + 1] = touched[word + 1]! | 1;
      } else if (from < to) spread(band, row - top, from, to, height);
      else spread(band, row - top, to, from, height);
      from = to;
      y = end;
    }
  }
}

/** Adds a side's part in one row that passes several columns, or leaves the block; `from` <= `to`. */
function spread(band: Band, row: number, from: number, to: number, height: number): void {
  const up = height < 0 ? -1 : 1;
  const total = height * up;
  const run = to - from;
  const last = to >> 8;
  let done = 0;
  let x = from;
  for (let column = from >> 8; column <= last; column++) {
    const left = column * PARTS;
    const end = column === last ? to : left + PARTS;
    const sofar = column === last ? total : Math.floor(((end - from) * total) / run) | 0;
    const part = (sofar - done) * up;
    if (part !== 0) {
      const right = x - left + (end - left);
      add(band, row, column, part * (512 - right));
      add(band, row, column + 1, part * right);
    }
    done = sofar;
    x = end;
  }
}

/**
 * Adds to the sum of one pixel, on a row that closes on itself. What lies k blocks to the right of the block
 * counts k times less at the start of every row: a closed contour adds to 0 all in all, so this is exact.
 */
function add(band: Band, row: number, column: number, value: number): void {
  const { width, words, sums, touched } = band;
  const inside = column >= 0 && column < width;
  const blocks = inside ? 0 : Math.floor(column / width);
  const home = column - blocks * width;
  const cell = row * width + home;
  sums[cell] = sums[cell]! + value;
  const word = row * words + (home >> 5);
  touched[word] = touched[word]! | (1 << (home & 31));
  if (blocks === 0) return;
  sums[row * width] = sums[row * width]! - blocks * value;
  touched[row * words] = touched[row * words]! | 1;
}
