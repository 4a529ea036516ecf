import { countOf, type Sides } from "./curve-sides.ts";

/** How near a point counts as on a side (µm): both were rounded to whole ones. */
export const NEAR = 1.6;
/** Comparisons of crossings with sides before polygons are left as they are. */
const MOST_LOOKS = 6e7;

/** Where a point lies on a curve. */
export interface Spot {
  readonly curve: number;
  readonly t: number;
}

/** Finds where points lie on curves: by themselves where they are points of the sides, else by looking. */
export interface Locator {
  /** Undefined when looking would take too long. */
  readonly near: (x: number, y: number) => Spot[] | undefined;
  readonly known: (x: number, y: number) => Spot[];
}

/** A locator on the sides of some curves. */
export function locator(sides: Sides): Locator {
  const starting = startsOf(sides);
  let looks = 0;
  let strips: ReturnType<typeof stripsOf> | undefined;
  return {
    known(x, y) {
      const spots: Spot[] = [];
      for (let s = starting.first(x, y); s >= 0; s = starting.next[s]!) {
        if (sides.x[s] !== x || sides.y[s] !== y) continue;
        spots.push({ curve: sides.curve[s]!, t: sides.t[s]! });
        const b = sides.before[s]!;
        if (sides.t[s] === 0) spots.push({ curve: sides.curve[b]!, t: 1 });
      }
      return spots;
    },
    near(x, y) {
      strips ??= stripsOf(sides);
      const strip = strips.at(x);
      looks += strip.length;
      if (looks > MOST_LOOKS) return undefined;
      const spots: Spot[] = [];
      for (const s of strip) {
        const [ax, ay] = [sides.x[s]!, sides.y[s]!];
        const e = sides.after[s]!;
        const [bx, by] = [sides.x[e]!, sides.y[e]!];
        if (x < Math.min(ax, bx) - NEAR || x > Math.max(ax, bx) + NEAR) continue;
        if (y < Math.min(ay, by) - NEAR || y > Math.max(ay, by) + NEAR) continue;
        const [dx, dy] = [bx - ax, by - ay];
        const long = dx * dx + dy * dy;
        if (long === 0) continue;
        const off = dx * (y - ay) - dy * (x - ax);
        if (off * off > NEAR * NEAR * long) continue;
        const share = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / long));
        const curve = sides.curve[s]!;
        spots.push({ curve, t: sides.t[s]! + share * (1 / countOf(sides.firsts, curve)) });
      }
      return spots;
    },
  };
}

/** Sides by where they start, in a table of chains: `first` may begin with others, and -1 ends each. */
function startsOf({ x, y }: Sides): {
  readonly first: (x: number, y: number) => number;
  readonly next: Int32Array;
} {
  let size = 16;
  while (size < 2 * x.length) size *= 2;
  const heads = new Int32Array(size).fill(-1);
  const next = new Int32Array(x.length);
  const slot = (px: number, py: number): number =>
    (Math.imul(px, 73_856_093) ^ Math.imul(py, 19_349_663)) & (size - 1);
  // From the last on, so that chains run from the first.
  for (let s = x.length - 1; s >= 0; s--) {
    const at = slot(x[s]!, y[s]!);
    next[s] = heads[at]!;
    heads[at] = s;
  }
  return { first: (px, py) => heads[slot(px, py)]!, next };
}

/** Most upright strips that sides are sorted into. */
const STRIPS = 512;

/** Sides by the upright strips that they pass through, so that a point looks at few. */
function stripsOf({ x, after }: Sides): { readonly at: (at: number) => readonly number[] } {
  let [least, most] = [Infinity, -Infinity];
  for (const v of x) {
    least = Math.min(least, v);
    most = Math.max(most, v);
  }
  const count = Math.max(1, Math.min(STRIPS, Math.ceil(x.length / 8)));
  const width = (most - least) / count + 1;
  const strip = (v: number): number => Math.min(count - 1, Math.max(0, Math.floor((v - least) / width)));
  const lists = Array.from({ length: count }, (): number[] => []);
  for (let s = 0; s < x.length; s++) {
    const [a, b] = [x[s]!, x[after[s]!]!];
    const last = strip(Math.max(a, b) + NEAR);
    for (let k = strip(Math.min(a, b) - NEAR); k <= last; k++) lists[k]!.push(s);
  }
  return { at: (v) => lists[strip(v)]! };
}
