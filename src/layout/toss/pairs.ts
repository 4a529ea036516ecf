import type { Images } from "../../geometry/images.ts";
import { type Buckets, bucketsOver } from "./buckets.ts";
import type { Crowd } from "./crowd.ts";

/** Bodies that could touch: body `first[k]`, and `second[k]` under an operation and moved by (dx, dy). */
export interface Pairs {
  readonly first: number[];
  readonly second: number[];
  readonly operation: number[];
  readonly dx: number[];
  readonly dy: number[];
}

const none = (): Pairs => ({ first: [], second: [], operation: [], dx: [], dy: [] });

function add(pairs: Pairs, i: number, j: number, operation: number, dx: number, dy: number): void {
  pairs.first.push(i);
  pairs.second.push(j);
  pairs.operation.push(operation);
  pairs.dx.push(dx);
  pairs.dy.push(dy);
}

/** Bodies of a crowd by the place of their centres, as lists threaded through one array. */
interface Threaded extends Buckets {
  /** The box of all centres (µm). */
  readonly box: readonly number[];
  /** The first of a bucket, and the next after each, the lowest number first; -1 where there is none. */
  readonly head: Int32Array;
  readonly next: Int32Array;
  /** The largest radius (µm). */
  readonly widest: number;
}

/** See {@link Threaded}: of these bodies, in buckets that hold two of the largest and `reach` µm. */
function threaded({ x, y, radius }: Crowd, bodies: readonly number[], reach: number): Threaded {
  let widest = 0;
  const box: [number, number, number, number] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const i of bodies) {
    widest = Math.max(widest, radius[i]!);
    box[0] = Math.min(box[0], x[i]!);
    box[1] = Math.min(box[1], y[i]!);
    box[2] = Math.max(box[2], x[i]!);
    box[3] = Math.max(box[3], y[i]!);
  }
  const buckets = bucketsOver(box, 2 * widest + reach);
  const head = new Int32Array(buckets.count).fill(-1);
  const next = new Int32Array(x.length);
  for (let k = bodies.length - 1; k >= 0; k--) {
    const i = bodies[k]!;
    const bucket = buckets.row(y[i]!) * buckets.columns + buckets.column(x[i]!);
    next[i] = head[bucket]!;
    head[bucket] = i;
  }
  return { ...buckets, box, head, next, widest };
}

/** Visits the bodies numbered up to `last` whose buckets come within `far` µm of (x, y) on both axes. */
function upTo(
  last: number,
  { head, next, columns, column, row }: Threaded,
  x: number,
  y: number,
  far: number,
  visit: (i: number) => void,
): void {
  const toColumn = column(x + far);
  const toRow = row(y + far);
  for (let r = row(y - far); r <= toRow; r++)
    for (let k = column(x - far); k <= toColumn; k++)
      for (let i = head[r * columns + k]!; i >= 0 && i <= last; i = next[i]!) visit(i);
}

/** Every pair whose circles come within `reach` µm of each other, each once; a body and its own copies too. */
export function pairsOf(images: Images, crowd: Crowd, reach: number): Pairs {
  const pairs = none();
  const { x, y, radius } = crowd;
  const count = x.length;
  const threads = threaded(crowd, [...x.keys()], reach);
  const { box, widest } = threads;
  images.operations.forEach(([a, b, c, d, e, f], operation) => {
    for (let j = 0; j < count; j++) {
      const jx = a * x[j]! + c * y[j]! + e;
      const jy = b * x[j]! + d * y[j]! + f;
      const far = radius[j]! + widest + reach;
      images.between([jx, jy, jx, jy], box, far, (dx, dy) => {
        upTo(j, threads, jx + dx, jy + dy, far, (i) => {
          if (i === j && operation === 0 && (dx < 0 || (dx === 0 && dy <= 0))) return;
          const ox = jx + dx - x[i]!;
          const oy = jy + dy - y[i]!;
          const near = radius[i]! + radius[j]! + reach;
          if (ox * ox + oy * oy < near * near) add(pairs, i, j, operation, dx, dy);
        });
      });
    }
  });
  return pairs;
}

/**
 * Every pair of one entry, own copies by operations too, whose centres are within `apart` of their entry and their radii of
 * each other on both axes (µm), each once, in order of the bodies. An entry without `apart` has none.
 */
export function kinPairsOf(images: Images, crowd: Crowd, apart: readonly number[]): Pairs {
  const pairs = none();
  const { x, y, radius, movers } = crowd;
  for (const [entry, reach] of apart.entries()) {
    if (reach <= 0) continue;
    const kin = [...movers.keys()].filter((i) => movers[i]!.body.entry === entry);
    const threads = threaded(crowd, kin, reach);
    const { box, widest } = threads;
    const of = new Map(kin.map((i) => [i, none()]));
    for (const j of kin)
      images.operations.forEach(([a, b, c, d, e, f], operation) => {
        const [jx, jy] = [a * x[j]! + c * y[j]! + e, b * x[j]! + d * y[j]! + f];
        const far = reach + widest + radius[j]!;
        images.between([jx, jy, jx, jy], box, far, (dx, dy) => {
          upTo(j, threads, jx + dx, jy + dy, far, (i) => {
            if (i === j && operation === 0) return; // translations move with it
            const near = reach + radius[i]! + radius[j]!;
            if (Math.abs(jx + dx - x[i]!) <= near && Math.abs(jy + dy - y[i]!) <= near)
              add(of.get(i)!, i, j, operation, dx, dy);
          });
        });
      });
    for (const own of of.values())
      for (let k = 0; k < own.first.length; k++)
        add(pairs, own.first[k]!, own.second[k]!, own.operation[k]!, own.dx[k]!, own.dy[k]!);
  }
  return pairs;
}
