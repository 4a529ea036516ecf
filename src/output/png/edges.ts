import { CURVE, eachContour } from "../../geometry/path.ts";
import type { Layer } from "../../tile/tile.ts";
import { type Grid, PARTS } from "./grid.ts";
import { snapContour } from "./snap.ts";

/** The sides of all polygons on the grid, sorted by layer and by band of rows. */
export interface Edges {
  /** x0, y0, x1, y1 of each side in 1/256 pixel, its upper end at or above the block's last row. */
  readonly sides: Int32Array;
  /** Numbers of sides (a quarter of their index in `sides`); one is in every band that it touches. */
  readonly order: Int32Array;
  /** Where layer l, band b starts in `order`, at l · bands + b; the next number is where it ends. */
  readonly starts: Int32Array;
  readonly bands: number;
  /** Rows of pixels in a band. */
  readonly rows: number;
}

/** Cuts all curves into sides on the pixel grid and sorts them into bands of `rows` rows. */
export function collectEdges(layers: readonly Layer[], grid: Grid, rows: number): Edges {
  const { sides, ends } = cutSides(layers, grid);
  const bands = Math.ceil(grid.height / rows);
  const bandOf = (y: number): number => Math.floor(y / (PARTS * rows));
  const lastRow = grid.height * PARTS - 1;
  const eachEntry = (visit: (bucket: number, side: number) => void): void => {
    let layer = 0;
    for (let side = 0; side * 4 < sides.length; side++) {
      while (side === ends[layer]) layer++;
      const y0 = sides[side * 4 + 1]!;
      const y1 = sides[side * 4 + 3]!;
      const last = bandOf(Math.min(lastRow, Math.max(y0, y1) - 1));
      for (let band = bandOf(Math.max(0, Math.min(y0, y1))); band <= last; band++)
        visit(layer * bands + band, side);
    }
  };
  // A counting sort: sides of one bucket keep their order.
  const starts = new Int32Array(layers.length * bands + 1);
  eachEntry((bucket) => {
    starts[bucket + 1]!++;
  });
  for (let i = 1; i < starts.length; i++) starts[i] = starts[i]! + starts[i - 1]!;
  const next = starts.slice();
  const order = new Int32Array(starts[starts.length - 1]!);
  eachEntry((bucket, side) => {
    order[next[bucket]!++] = side;
  });
  return { sides, order, starts, bands, rows };
}

/** All sides that are not level, and how many there are up to the end of each layer. */
function cutSides(layers: readonly Layer[], grid: Grid): { sides: Int32Array; ends: number[] } {
  const blockHeight = grid.height * PARTS;
  let sides = new Int32Array(4096);
  let length = 0;
  const put = (x0: number, y0: number, x1: number, y1: number): void => {
    if (length === sides.length) {
      const larger = new Int32Array(length * 2);
      larger.set(sides);
      sides = larger;
    }
    sides[length++] = x0;
    sides[length++] = y0;
    sides[length++] = x1;
    sides[length++] = y1;
  };
  const ends = layers.map(({ path }) => {
    eachContour(path, (from, to) => {
      if (to - from < CURVE) return;
      const ring = snapContour(path.points.subarray(from, to), grid);
      for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
        const y0 = ring[j + 1]!;
        const y1 = ring[i + 1]!;
        if (y0 === y1) continue;
        // What leaves the block below comes in again above, as often as it takes.
        const bottom = Math.max(y0, y1);
        let up = Math.floor(Math.min(y0, y1) / blockHeight) * blockHeight;
        for (; up < bottom; up += blockHeight) put(ring[j]!, y0 - up, ring[i]!, y1 - up);
      }
    });
    return length / 4;
  });
  return { sides: sides.subarray(0, length), ends };
}
