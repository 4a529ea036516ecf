import { CURVE, eachContour, type Path } from "../../geometry/path.ts";
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
  const list = sideList();
  const ends = layers.map(({ path }) => {
    cutSides(path, grid, list.put);
    return list.count();
  });
  return sortSides(list.sides(), ends, grid.height, rows);
}

/** Sides as they are found. */
interface SideList {
  readonly put: (x0: number, y0: number, x1: number, y1: number) => void;
  readonly count: () => number;
  readonly sides: () => Int32Array;
}

export function sideList(): SideList {
  let sides = new Int32Array(4096);
  let length = 0;
  return {
    put(x0, y0, x1, y1) {
      if (length === sides.length) {
        const larger = new Int32Array(length * 2);
        larger.set(sides);
        sides = larger;
      }
      sides[length++] = x0;
      sides[length++] = y0;
      sides[length++] = x1;
      sides[length++] = y1;
    },
    count: () => length / 4,
    sides: () => sides.subarray(0, length),
  };
}

/** Sides that are not level, layer after layer, sorted into bands; `ends` holds how many there are up to each layer's end. */
export function sortSides(sides: Int32Array, ends: readonly number[], height: number, rows: number): Edges {
  const bands = Math.ceil(height / rows);
  const bandOf = (y: number): number => Math.floor(y / (PARTS * rows));
  const lastRow = height * PARTS - 1;
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
  const starts = new Int32Array(ends.length * bands + 1);
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

/** All sides of a path that are not level, moved into the block. */
function cutSides(path: Path, grid: Grid, put: SideList["put"]): void {
  const blockHeight = grid.height * PARTS;
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
}
