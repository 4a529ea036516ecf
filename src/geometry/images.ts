import { type Arrangement, cellsInBlock, modulo, type Vector } from "./lattice.ts";
import type { Matrix } from "./matrix.ts";
import { inRegion } from "./region.ts";

/** A box as minX, minY, maxX, maxY (µm). */
export type Bounds = ArrayLike<number>;

/** The translations and operations of a repeat, ready to be asked for the copies near a place. */
export interface Images {
  readonly operations: readonly Matrix[];
  /**
   * Calls `visit` with every translation that brings `moving` to within `reach` of `still` on both axes; true from `visit`
   * ends it. Returns whether it was ended.
   */
  readonly between: (
    moving: Bounds,
    still: Bounds,
    reach: number,
    visit: (dx: number, dy: number) => unknown,
  ) => boolean;
  /** The translation that brings a point into the unit (its region, if it has one), if there is one. */
  readonly home: (x: number, y: number) => Vector | undefined;
}

/** See {@link Images}. Works out the lattice's cells once. */
export function imagesOf(arrangement: Arrangement): Images {
  const { lattice, unit, region, operations } = arrangement;
  const { width, height } = lattice.block;
  const cells = cellsInBlock(lattice);
  return {
    operations,
    between(moving, still, reach, visit) {
      const left = still[0]! - moving[2]! - reach;
      const right = still[2]! - moving[0]! + reach;
      const top = still[1]! - moving[3]! - reach;
      const bottom = still[3]! - moving[1]! + reach;
      for (const [cx, cy] of cells)
        for (let x = cx + width * Math.ceil((left - cx) / width); x <= right; x += width)
          for (let y = cy + height * Math.ceil((top - cy) / height); y <= bottom; y += height)
            if (visit(x, y) === true) return true;
      return false;
    },
    home(x, y) {
      for (const [cx, cy] of cells) {
        for (let atX = modulo(x - cx, width); atX < unit.width; atX += width)
          for (let atY = modulo(y - cy, height); atY < unit.height; atY += height)
            if (!region || inRegion(region, atX, atY)) return [atX - x, atY - y];
      }
      return undefined;
    },
  };
}

/** The box of a box under a matrix. */
export function transformBounds(box: Bounds, m: Matrix): Float64Array {
  const [a, b, c, d, e, f] = m;
  const out = new Float64Array([Infinity, Infinity, -Infinity, -Infinity]);
  for (const i of [0, 2])
    for (const j of [1, 3]) {
      const x = a * box[i]! + c * box[j]! + e;
      const y = b * box[i]! + d * box[j]! + f;
      out[0] = Math.min(out[0]!, x);
      out[1] = Math.min(out[1]!, y);
      out[2] = Math.max(out[2]!, x);
      out[3] = Math.max(out[3]!, y);
    }
  return out;
}
