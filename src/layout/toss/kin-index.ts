/** Has a centre (µm). */
interface Centred {
  readonly cx: number;
  readonly cy: number;
}

/** Finds the copies of one entry near a place. */
export interface KinIndex<C> {
  readonly add: (entry: number, copy: C) => void;
  readonly remove: (entry: number, copy: C) => void;
  /** Calls `visit` with every copy of an entry whose centre is within `reach` of (x, y), and some others; true ends it. */
  readonly near: (entry: number, x: number, y: number, reach: number, visit: (copy: C) => boolean) => boolean;
}

/** An empty index over a zone (minX, minY, maxX, maxY in µm), with buckets of `bucket` µm. */
export function createKinIndex<C extends Centred>(zone: Float64Array, bucket: number): KinIndex<C> {
  const [left, top, right, bottom] = zone as unknown as [number, number, number, number];
  const columns = Math.max(1, Math.ceil((right - left) / bucket));
  const rows = Math.max(1, Math.ceil((bottom - top) / bucket));
  const lists: C[][] = [];
  const grids: (C[] | undefined)[][] = [];
  const column = (x: number): number => Math.min(columns - 1, Math.max(0, Math.floor((x - left) / bucket)));
  const row = (y: number): number => Math.min(rows - 1, Math.max(0, Math.floor((y - top) / bucket)));
  const drop = (list: C[], copy: C): void => {
    const at = list.indexOf(copy);
    list[at] = list[list.length - 1]!;
    list.pop();
  };
  return {
    add(entry, copy) {
      lists[entry] ??= [];
      grids[entry] ??= [];
      lists[entry].push(copy);
      const at = row(copy.cy) * columns + column(copy.cx);
      const cell = grids[entry][at];
      if (cell) cell.push(copy);
      else grids[entry][at] = [copy];
    },
    remove(entry, copy) {
      drop(lists[entry]!, copy);
      drop(grids[entry]![row(copy.cy) * columns + column(copy.cx)]!, copy);
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
