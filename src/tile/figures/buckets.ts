import type { Bounds } from "../../geometry/images.ts";
import type { Size } from "../../geometry/lattice.ts";

/** Most buckets along one side of the block. */
const MOST = 512;

/** Boxes sorted into a grid over a block that closes on itself, so that a look around touches few of them. */
export interface Buckets {
  /**
   * Calls `visit` once for every box and every translation (whole blocks) that may bring it to within `reach` of
   * `around` on both axes; some of these turn out farther away.
   */
  readonly near: (
    around: Bounds,
    reach: number,
    visit: (item: number, dx: number, dy: number) => void,
  ) => void;
}

/** See {@link Buckets}. `wanted` is the bucket size aimed at (µm). */
export function bucketsOf(boxes: readonly Bounds[], block: Size, wanted: number): Buckets {
  const count = (length: number): number => Math.max(1, Math.min(MOST, Math.floor(length / wanted)));
  const [columns, rows] = [count(block.width), count(block.height)];
  const [width, height] = [block.width / columns, block.height / rows];
  const spans = new Int32Array(boxes.length * 4);
  boxes.forEach((box, i) => {
    spans[i * 4] = Math.floor(box[0]! / width);
    spans[i * 4 + 1] = Math.floor(box[1]! / height);
    spans[i * 4 + 2] = Math.floor(box[2]! / width);
    spans[i * 4 + 3] = Math.floor(box[3]! / height);
  });
  const { starts, items, xs, ys } = sorted(spans, columns, rows);
  return {
    near(around, reach, visit) {
      const x0 = Math.floor((around[0]! - reach) / width);
      const y0 = Math.floor((around[1]! - reach) / height);
      const x1 = Math.floor((around[2]! + reach) / width);
      const y1 = Math.floor((around[3]! + reach) / height);
      for (let y = y0; y <= y1; y++)
        for (let x = x0; x <= x1; x++) {
          const bucket = wrap(y, rows) * columns + wrap(x, columns);
          for (let e = starts[bucket]!; e < starts[bucket + 1]!; e++) {
            const item = items[e]!;
            const dx = x - xs[e]!;
            const dy = y - ys[e]!;
            // A box that shares several buckets with the place is met in the first of them only.
            if (x !== Math.max(x0, spans[item * 4]! + dx) || y !== Math.max(y0, spans[item * 4 + 1]! + dy))
              continue;
            visit(item, (dx / columns) * block.width, (dy / rows) * block.height);
          }
        }
    },
  };
}

const wrap = (n: number, d: number): number => n - d * Math.floor(n / d);

/** Every box in every bucket it touches, sorted by bucket; `xs` and `ys` say where the box itself would have it. */
function sorted(
  spans: Int32Array,
  columns: number,
  rows: number,
): { starts: Int32Array; items: Int32Array; xs: Int32Array; ys: Int32Array } {
  const each = (visit: (bucket: number, item: number, x: number, y: number) => void): void => {
    for (let i = 0; i * 4 < spans.length; i++)
      for (let y = spans[i * 4 + 1]!; y <= spans[i * 4 + 3]!; y++)
        for (let x = spans[i * 4]!; x <= spans[i * 4 + 2]!; x++)
          visit(wrap(y, rows) * columns + wrap(x, columns), i, x, y);
  };
  const starts = new Int32Array(columns * rows + 1);
  each((bucket) => {
    starts[bucket + 1]!++;
  });
  for (let b = 1; b < starts.length; b++) starts[b] = starts[b]! + starts[b - 1]!;
  const next = starts.slice();
  const total = starts[starts.length - 1]!;
  const [items, xs, ys] = [new Int32Array(total), new Int32Array(total), new Int32Array(total)];
  each((bucket, item, x, y) => {
    const at = next[bucket]!++;
    items[at] = item;
    xs[at] = x;
    ys[at] = y;
  });
  return { starts, items, xs, ys };
}
