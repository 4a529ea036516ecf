import type { Outline } from "../../geometry/outline.ts";
import type { PixelGrid } from "./raster.ts";

/** Room for the crossings of an outline with the middles of rows: a chain for each row, from left to right. */
export interface Scratch {
  readonly heads: Int32Array;
  readonly xs: number[];
  readonly ways: number[];
  readonly nexts: number[];
}

export const fillScratch = (rows: number): Scratch => ({
  heads: new Int32Array(rows).fill(-1),
  xs: [],
  ways: [],
  nexts: [],
});

/** What is told of every run of pixels in a row that is filled: `to` is one past the last; both wrap round `columns`. */
export type Run = (row: number, from: number, to: number) => void;

/** Finds the pixels whose middle lies in an outline (nonzero winding) moved by (dx, dy), run by run. */
export function fillOutline(
  { width, height, rows, columns }: PixelGrid,
  outline: Outline,
  dx: number,
  dy: number,
  scratch: Scratch,
  run: Run,
): void {
  const { points, rings, box } = outline;
  const { heads, xs, ways, nexts } = scratch;
  xs.length = 0;
  ways.length = 0;
  nexts.length = 0;
  for (let r = 0; r + 1 < rings.length; r++) {
    const last = rings[r + 1]! * 2 - 2;
    for (let i = rings[r]! * 2; i < last; i += 2) {
      const y0 = (points[i + 1]! + dy) / height - 0.5;
      const y1 = (points[i + 3]! + dy) / height - 0.5;
      if (y0 === y1) continue;
      const x0 = (points[i]! + dx) / width - 0.5;
      const slope = ((points[i + 2]! + dx) / width - 0.5 - x0) / (y1 - y0);
      const end = Math.ceil(Math.max(y0, y1));
      for (let row = Math.ceil(Math.min(y0, y1)); row < end; row++)
        insert(scratch, row & (rows - 1), x0 + (row - y0) * slope, y1 > y0 ? 1 : -1);
    }
  }
  const end = Math.ceil((box[3]! + dy) / height - 0.5);
  const start = Math.ceil((box[1]! + dy) / height - 0.5);
  for (let row = start; row < Math.min(end, start + rows); row++) {
    const at = row & (rows - 1);
    let winding = 0;
    let from = 0;
    for (let k = heads[at]!; k >= 0; k = nexts[k]!) {
      if (winding === 0) from = xs[k]!;
      winding += ways[k]!;
      if (winding === 0) run(at, Math.ceil(from), Math.min(Math.ceil(xs[k]!), Math.ceil(from) + columns));
    }
    heads[at] = -1;
  }
}

function insert({ heads, xs, ways, nexts }: Scratch, row: number, x: number, way: number): void {
  const index = xs.length;
  xs.push(x);
  ways.push(way);
  let before = -1;
  let after = heads[row]!;
  while (after >= 0 && xs[after]! < x) {
    before = after;
    after = nexts[after]!;
  }
  nexts.push(after);
  if (before < 0) heads[row] = index;
  else nexts[before] = index;
}
