import { type Bounds, type Images, transformBounds } from "../geometry/images.ts";
import type { Matrix } from "../geometry/matrix.ts";
import { type Outline, transformOutline } from "../geometry/outline.ts";

/** One image of a motif: an outline moved by (dx, dy). */
export interface Appearance {
  /** Number of the motif among those given. */
  readonly index: number;
  readonly outline: Outline;
  readonly dx: number;
  readonly dy: number;
  /** What maps the motif as it was given onto this image. */
  readonly matrix: Matrix;
}

/**
 * All images of some outlines within `reach` µm of any of them as it stands, in square buckets by place. The search
 * visits each image whose bucket a box, grown by `reach`, touches: once.
 */
export function appearancesOf(
  stills: readonly Outline[],
  images: Images,
  reach: number,
): (box: Bounds, visit: (appearance: Appearance) => void) => void {
  const zone = zoneOf(stills, reach);
  const [left, top, right, bottom] = zone as unknown as [number, number, number, number];
  const size = bucketSize(stills, reach, (right - left) * (bottom - top));
  const columns = Math.floor((right - left) / size) + 1;
  const rows = Math.floor((bottom - top) / size) + 1;
  const buckets: number[][] = Array.from({ length: columns * rows }, () => []);
  const all: Appearance[] = [];
  const clamped = (n: number, count: number): number =>
    Math.max(0, Math.min(count - 1, Math.floor(n / size)));
  const eachBucket = (
    box: Bounds,
    dx: number,
    dy: number,
    grow: number,
    visit: (b: number[]) => void,
  ): void => {
    const toColumn = clamped(box[2]! + dx + grow - left, columns);
    const toRow = clamped(box[3]! + dy + grow - top, rows);
    for (let row = clamped(box[1]! + dy - grow - top, rows); row <= toRow; row++)
      for (let column = clamped(box[0]! + dx - grow - left, columns); column <= toColumn; column++)
        visit(buckets[row * columns + column]!);
  };
  stills.forEach((still, index) => {
    images.operations.forEach((operation, k) => {
      let outline: Outline | undefined = k === 0 ? still : undefined;
      const [a, b, c, d, e, f] = operation;
      images.between(k === 0 ? still.box : transformBounds(still.box, operation), zone, 0, (dx, dy) => {
        outline ??= transformOutline(still, operation);
        const at = all.push({ index, outline, dx, dy, matrix: [a, b, c, d, e + dx, f + dy] }) - 1;
        eachBucket(outline.box, dx, dy, 0, (bucket) => bucket.push(at));
      });
    });
  });
  const seen = new Int32Array(all.length).fill(-1);
  let searches = 0;
  return (box, visit) => {
    const stamp = searches++;
    eachBucket(box, 0, 0, reach, (bucket) => {
      for (const at of bucket) {
        if (seen[at] === stamp) continue;
        seen[at] = stamp;
        visit(all[at]!);
      }
    });
  };
}

/** The box around all outlines, grown. */
function zoneOf(stills: readonly Outline[], by: number): Float64Array {
  const zone = Float64Array.from([Infinity, Infinity, -Infinity, -Infinity]);
  for (const { box } of stills) {
    zone[0] = Math.min(zone[0]!, box[0]! - by);
    zone[1] = Math.min(zone[1]!, box[1]! - by);
    zone[2] = Math.max(zone[2]!, box[2]! + by);
    zone[3] = Math.max(zone[3]!, box[3]! + by);
  }
  return zone;
}

/** Most buckets: a few stray outlines far apart must not need millions. */
const MOST_BUCKETS = 250_000;

function bucketSize(stills: readonly Outline[], reach: number, area: number): number {
  let sides = 0;
  for (const { box } of stills) sides += Math.max(box[2]! - box[0]!, box[3]! - box[1]!);
  return Math.max(1, reach, sides / stills.length, Math.sqrt(area / MOST_BUCKETS));
}
