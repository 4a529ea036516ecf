import type { Bounds } from "../../geometry/images.ts";

/** Squares over a zone, numbered row by row, to find things by place. What lies beside the zone counts to its edge. */
export interface Buckets {
  readonly columns: number;
  readonly rows: number;
  /** How many there are. */
  readonly count: number;
  /** Length of their sides (µm). */
  readonly side: number;
  readonly column: (x: number) => number;
  readonly row: (y: number) => number;
}

/** So many at most: where small things stand on a wide ground, more would cost memory and hold nothing. */
const MOST = 1 << 19;

/** Buckets of `size` µm over a zone (minX, minY, maxX, maxY in µm); larger ones where these would be too many. */
export function bucketsOver(zone: Bounds, size: number): Buckets {
  const [left, top] = [zone[0]!, zone[1]!];
  const [width, height] = [Math.max(0, zone[2]! - left), Math.max(0, zone[3]! - top)];
  // With sides of s there are no more than width height / s² + (width + height) / s + 1.
  const side = Math.max(size, Math.sqrt((2 * width * height) / MOST), (2 * (width + height)) / MOST);
  const columns = Math.max(1, Math.ceil(width / side));
  const rows = Math.max(1, Math.ceil(height / side));
  return {
    columns,
    rows,
    count: columns * rows,
    side,
    column: (x) => Math.min(columns - 1, Math.max(0, Math.floor((x - left) / side))),
    row: (y) => Math.min(rows - 1, Math.max(0, Math.floor((y - top) / side))),
  };
}
