import { bucketsOver } from "./buckets.ts";

/** Has a middle (µm). */
interface Placed {
  readonly mx: number;
  readonly my: number;
}

/** Finds the copies of one entry near a place. */
export interface KinIndex<C> {
  readonly add: (entry: number, copy: C) => void;
  readonly remove: (entry: number, copy: C) => void;
  /** Calls `visit` with every copy of an entry whose middle is within `reach` of (x, y), and some others; true ends it. */
  readonly near: (entry: number, x: number, y: number, reach: number, visit: (copy: C) => boolean) => boolean;
}

/** Most buckets along a side: more than there are motifs of an entry would only cost memory. */
const SIDE = 64;

/** An empty index over a zone (minX, minY, maxX, maxY in µm), with buckets of `least` µm, or larger on a wide zone. */
export function createKinIndex<C extends Placed>(zone: Float64Array, least: number): KinIndex<C> {
  const [left, top, right, bottom] = zone as unknown as [number, number, number, number];
  const bucket = Math.max(least, (right - left) / SIDE, (bottom - top) / SIDE);
  const { columns, count, column, row } = bucketsOver(zone, bucket);
  const lists: C[][] = [];
  const grids: (C[] | undefined)[][] = [];
  const drop = (list: C[], copy: C): void => {
    const at = list.indexOf(copy);
    list[at] = list[list.length - 1]!;
    list.pop();
  };
  return {
    add(entry, copy) {
      lists[entry] ??= [];
      grids[entry] ??= new Array<C[] | undefined>(count).fill(undefined);
      lists[entry].push(copy);
      const at = row(copy.my) * columns + column(copy.mx);
      const cell = grids[entry][at];
      if (cell) cell.push(copy);
      else grids[entry][at] = [copy];
    },
    remove(entry, copy) {
      drop(lists[entry]!, copy);
      drop(grids[entry]![row(copy.my) * columns + column(copy.mx)]!, copy);
    },
    near(entry, x, y, reach, visit) {
      const list = lists[entry];
      if (!list) return false;
      const fromColumn = column(x - reach);
      const toColumn = column(x + reach);
      const fromRow = row(y - reach);
      const toRow = row(y + reach);
      // While there are few, looking at all of them is quicker than at the buckets.
      if (list.length <= 2 * (toColumn - fromColumn + 1) * (toRow - fromRow + 1)) return list.some(visit);
      const grid = grids[entry]!;
      for (let r = fromRow; r <= toRow; r++)
        for (let c = fromColumn; c <= toColumn; c++) if (grid[r * columns + c]?.some(visit)) return true;
      return false;
    },
  };
}
