import type { Images } from "../../geometry/images.ts";
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

/** Every pair whose circles come within `reach` µm of each other, each once; a body and its own copies too. */
export function pairsOf(images: Images, crowd: Crowd, reach: number): Pairs {
  const pairs = none();
  const { x, y, radius } = crowd;
  const count = x.length;
  let widest = 0;
  const box = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < count; i++) {
    widest = Math.max(widest, radius[i]!);
    box[0] = Math.min(box[0]!, x[i]!);
    box[1] = Math.min(box[1]!, y[i]!);
    box[2] = Math.max(box[2]!, x[i]!);
    box[3] = Math.max(box[3]!, y[i]!);
  }
  // Buckets over the box of all centres, as lists threaded through one array.
  const size = 2 * widest + reach;
  const columns = Math.max(1, Math.ceil((box[2]! - box[0]!) / size));
  const rows = Math.max(1, Math.ceil((box[3]! - box[1]!) / size));
  const head = new Int32Array(columns * rows).fill(-1);
  const next = new Int32Array(count);
  const column = (at: number): number =>
    Math.max(0, Math.min(columns - 1, Math.floor((at - box[0]!) / size)));
  const row = (at: number): number => Math.max(0, Math.min(rows - 1, Math.floor((at - box[1]!) / size)));
  for (let i = count - 1; i >= 0; i--) {
    const bucket = row(y[i]!) * columns + column(x[i]!);
    next[i] = head[bucket]!;
    head[bucket] = i;
  }
  images.operations.forEach(([a, b, c, d, e, f], operation) => {
    for (let j = 0; j < count; j++) {
      const jx = a * x[j]! + c * y[j]! + e;
      const jy = b * x[j]! + d * y[j]! + f;
      const far = radius[j]! + widest + reach;
      images.between([jx, jy, jx, jy], box, far, (dx, dy) => {
        const toColumn = column(jx + dx + far);
        const toRow = row(jy + dy + far);
        for (let r = row(jy + dy - far); r <= toRow; r++)
          for (let k = column(jx + dx - far); k <= toColumn; k++)
            for (let i = head[r * columns + k]!; i >= 0; i = next[i]!) {
              if (i > j) continue;
              if (i === j && operation === 0 && (dx < 0 || (dx === 0 && dy <= 0))) continue;
              const ox = jx + dx - x[i]!;
              const oy = jy + dy - y[i]!;
              const near = radius[i]! + radius[j]! + reach;
              if (ox * ox + oy * oy >= near * near) continue;
              add(pairs, i, j, operation, dx, dy);
            }
      });
    }
  });
  return pairs;
}

/** Every pair of one entry, own copies by operations too, whose middles may come within `apart` of their entry (µm), each once. */
export function kinPairsOf(images: Images, crowd: Crowd, apart: readonly number[]): Pairs {
  const pairs = none();
  const { x, y, radius, movers } = crowd;
  const kin = apart.map((_, entry) => [...movers.keys()].filter((i) => movers[i]!.body.entry === entry));
  for (const [entry, list] of kin.entries())
    for (const [k, i] of list.entries())
      for (const j of list.slice(k))
        images.operations.forEach(([a, b, c, d, e, f], operation) => {
          if (i === j && operation === 0) return; // translations move with it
          const [jx, jy] = [a * x[j]! + c * y[j]! + e, b * x[j]! + d * y[j]! + f];
          const reach = apart[entry]! + radius[i]! + radius[j]!;
          images.between([jx, jy, jx, jy], [x[i]!, y[i]!, x[i]!, y[i]!], reach, (dx, dy) => {
            add(pairs, i, j, operation, dx, dy);
          });
        });
  return pairs;
}
