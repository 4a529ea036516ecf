import { pointSideSquared } from "../../geometry/distance.ts";
import type { Outline } from "../../geometry/outline.ts";

/** Points in rows and columns (µm). */
export interface Grid {
  readonly cell: number;
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
}

/** An outline, moved by (dx, dy). */
export interface Moved {
  readonly outline: Outline;
  readonly dx: number;
  readonly dy: number;
}

/**
 * Signed distance (µm) from every point of a grid to the nearest of some filled outlines, negative within them.
 *
 * Every point near a side is given that side; from there, points hand their nearest side on to their neighbours, in
 * one sweep down and one up (Danielsson 1980), so time hardly grows with the number of sides. Now and then a point
 * misses its nearest side by a hair: this is a sieve, and the exact distance decides.
 */
export function distanceMap(grid: Grid, outlines: readonly Moved[]): Float32Array {
  const sides = sidesOf(outlines);
  const nearest = new Int32Array(grid.columns * grid.rows).fill(-1);
  const squared = new Float64Array(nearest.length).fill(Infinity);
  seed(grid, sides, nearest, squared);
  sweep(grid, sides, nearest, squared, 1);
  sweep(grid, sides, nearest, squared, -1);
  const inside = windings(grid, sides);
  return Float32Array.from(squared, (d, at) => (inside[at] === 0 ? 1 : -1) * Math.sqrt(d));
}

/** x, y, x, y of every side. */
function sidesOf(outlines: readonly Moved[]): Float64Array {
  let count = 0;
  for (const { outline } of outlines) count += outline.points.length / 2 - (outline.rings.length - 1);
  const sides = new Float64Array(count * 4);
  let at = 0;
  for (const { outline, dx, dy } of outlines) {
    const { points, rings } = outline;
    for (let r = 0; r + 1 < rings.length; r++)
      for (let i = rings[r]! * 2; i < rings[r + 1]! * 2 - 2; i += 2) {
        sides[at++] = points[i]! + dx;
        sides[at++] = points[i + 1]! + dy;
        sides[at++] = points[i + 2]! + dx;
        sides[at++] = points[i + 3]! + dy;
      }
  }
  return sides;
}

/** Offers a side to a point. */
function offer(
  { cell, left, top, columns }: Grid,
  sides: Float64Array,
  nearest: Int32Array,
  squared: Float64Array,
  at: number,
  side: number,
): void {
  const x = left + (at % columns) * cell;
  const y = top + Math.floor(at / columns) * cell;
  const d = pointSideSquared(x, y, sides[side]!, sides[side + 1]!, sides[side + 2]!, sides[side + 3]!);
  if (d < squared[at]!) {
    squared[at] = d;
    nearest[at] = side;
  }
}

/** Gives sides to the points within a cell or so of them; those beside the grid, to the points of its rim. */
function seed(grid: Grid, sides: Float64Array, nearest: Int32Array, squared: Float64Array): void {
  const { cell, left, top, columns, rows } = grid;
  for (let side = 0; side < sides.length; side += 4) {
    const x = (sides[side]! - left) / cell;
    const y = (sides[side + 1]! - top) / cell;
    const dx = (sides[side + 2]! - left) / cell - x;
    const dy = (sides[side + 3]! - top) / cell - y;
    const steps = Math.max(1, Math.ceil(Math.max(Math.abs(dx), Math.abs(dy))));
    for (let k = 0; k <= steps; k++) {
      const column = Math.max(0, Math.min(columns - 1, Math.round(x + (dx * k) / steps)));
      const row = Math.max(0, Math.min(rows - 1, Math.round(y + (dy * k) / steps)));
      for (let j = Math.max(0, row - 1); j <= Math.min(rows - 1, row + 1); j++)
        for (let i = Math.max(0, column - 1); i <= Math.min(columns - 1, column + 1); i++)
          offer(grid, sides, nearest, squared, j * columns + i, side);
    }
  }
}

/** Hands nearest sides on, row by row from the first to the last (`way` 1) or back (-1). */
function sweep(
  grid: Grid,
  sides: Float64Array,
  nearest: Int32Array,
  squared: Float64Array,
  way: 1 | -1,
): void {
  const { columns, rows } = grid;
  const take = (at: number, from: number): void => {
    const side = nearest[from]!;
    if (side >= 0 && side !== nearest[at]) offer(grid, sides, nearest, squared, at, side);
  };
  for (let n = 0; n < rows; n++) {
    const row = way > 0 ? n : rows - 1 - n;
    const at = row * columns;
    const before = at - way * columns;
    for (let i = 0; i < columns; i++) {
      if (n > 0) {
        take(at + i, before + i);
        if (i > 0) take(at + i, before + i - 1);
        if (i + 1 < columns) take(at + i, before + i + 1);
      }
      if (i > 0) take(at + i, at + i - 1);
    }
    for (let i = columns - 2; i >= 0; i--) take(at + i, at + i + 1);
  }
}

/** How often the sides wind round every point; 0 is outside. */
function windings({ cell, left, top, columns, rows }: Grid, sides: Float64Array): Int32Array {
  const turns = new Int32Array(columns * rows);
  for (let s = 0; s < sides.length; s += 4) {
    const [x0, y0, x1, y1] = [sides[s]!, sides[s + 1]!, sides[s + 2]!, sides[s + 3]!];
    if (y0 === y1) continue;
    const way = y1 > y0 ? -1 : 1;
    const [low, high] = y1 > y0 ? [y0, y1] : [y1, y0];
    const last = Math.min(rows - 1, Math.ceil((high - top) / cell) - 1);
    for (let row = Math.max(0, Math.ceil((low - top) / cell)); row <= last; row++) {
      const x = x0 + ((top + row * cell - y0) / (y1 - y0)) * (x1 - x0);
      const column = Math.max(0, Math.ceil((x - left) / cell));
      if (column < columns) turns[row * columns + column]! += way;
    }
  }
  for (let row = 0; row < rows; row++)
    for (let at = row * columns + 1; at < (row + 1) * columns; at++) turns[at]! += turns[at - 1]!;
  return turns;
}
