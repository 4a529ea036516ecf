import type { Images } from "../../geometry/images.ts";
import type { Copy } from "./board.ts";
import type { Grid } from "./distance-map.ts";

/**
 * Distance (µm) from every cell of a window to the nearest motif, up to a cap: says at once where there is no
 * room. The window is the unit and a margin, so that a disc beside the unit can be looked up without wrapping.
 */
export interface Field extends Grid {
  readonly values: Float32Array;
  /** What the cells hold without any motif of the toss. */
  readonly ground: Float32Array;
  /** No cell holds more than this. */
  readonly cap: number;
}

/** The grid of a field over `window` (minX, minY, maxX, maxY). */
export function gridOver(window: Float64Array, cell: number): Grid {
  const [left, top, right, bottom] = window as unknown as [number, number, number, number];
  const columns = Math.ceil((right - left) / cell) + 1;
  const rows = Math.ceil((bottom - top) / cell) + 1;
  return { cell, left, top, columns, rows };
}

/** Distances that lower a field's ground: where there is `distance`, it holds no more than `distance + more`. */
export interface Lower {
  readonly distances: Float32Array;
  readonly more: number;
}

/**
 * An empty field over a grid.
 *
 * A motif must also keep clear of its own copies: a disc of radius r at c and its copy at c' are `gap` apart when
 * |c - c'| is 2r + gap. Holding (|c - c'| + gap) / 2 as the distance there says just that, so mirror lines and
 * centres of rotation need no rule of their own.
 */
export function createField(
  images: Images,
  grid: Grid,
  cap: number,
  gap: number,
  lower: readonly Lower[] = [],
): Field {
  const { cell, left, top, columns, rows } = grid;
  const ground = new Float32Array(columns * rows).fill(cap);
  images.operations.forEach((operation, index) => {
    if (index === 0) return;
    const [a, b, c, d, e, f] = operation;
    for (let row = 0; row < rows; row++)
      for (let column = 0; column < columns; column++) {
        const x = left + column * cell;
        const y = top + row * cell;
        const copyX = a * x + c * y + e;
        const copyY = b * x + d * y + f;
        const at = row * columns + column;
        images.between([copyX, copyY, copyX, copyY], [x, y, x, y], 2 * cap, (dx, dy) => {
          const ox = copyX + dx - x;
          const oy = copyY + dy - y;
          ground[at] = Math.min(ground[at]!, (Math.sqrt(ox * ox + oy * oy) + gap) / 2);
        });
      }
  });
  for (const { distances, more } of lower)
    for (let at = 0; at < ground.length; at++) ground[at] = Math.min(ground[at]!, distances[at]! + more);
  return { ...grid, values: ground.slice(), ground, cap };
}

/** A part of the field, cells from and to, both included. */
export interface Patch {
  readonly fromColumn: number;
  readonly toColumn: number;
  readonly fromRow: number;
  readonly toRow: number;
}

/** The cells within `reach` of (x, y); may be empty. */
export function patchAround(field: Field, x: number, y: number, reach: number): Patch {
  const { cell, left, top, columns, rows } = field;
  return {
    fromColumn: Math.max(0, Math.ceil((x - reach - left) / cell)),
    toColumn: Math.min(columns - 1, Math.floor((x + reach - left) / cell)),
    fromRow: Math.max(0, Math.ceil((y - reach - top) / cell)),
    toRow: Math.min(rows - 1, Math.floor((y + reach - top) / cell)),
  };
}

/** Puts a patch back to its ground. */
export function clearPatch(field: Field, patch: Patch): void {
  for (let row = patch.fromRow; row <= patch.toRow; row++) {
    const from = row * field.columns + patch.fromColumn;
    const to = row * field.columns + patch.toColumn + 1;
    if (to > from) field.values.set(field.ground.subarray(from, to), from);
  }
}

/** Lowers the field around one copy, within a patch where one is given. */
export function paint(field: Field, copy: Copy, within?: Patch): void {
  const { cell, left, top, columns, values, cap } = field;
  const { texture, extra } = copy.piece.body;
  const { scale } = copy.piece;
  const reach = copy.r + cap + extra;
  const patch = within ?? patchAround(field, copy.cx, copy.cy, reach);
  const [a, b, c, d, e, f] = copy.matrix;
  const square = a * d - b * c; // plus or minus scale squared: the inverse is the adjugate over it
  const per = 1 / (square * texture.pitch);
  const stepU = d * per * cell;
  const stepV = -b * per * cell;
  const last = texture.side - 1;
  const { values: texels, side } = texture;
  for (let row = patch.fromRow; row <= patch.toRow; row++) {
    const y = top + row * cell;
    const oy = y - copy.cy;
    const span = reach * reach - oy * oy;
    if (span <= 0) continue;
    const half = Math.sqrt(span);
    const from = Math.max(patch.fromColumn, Math.ceil((copy.cx - half - left) / cell));
    const to = Math.min(patch.toColumn, Math.floor((copy.cx + half - left) / cell));
    const x = left + from * cell;
    let u = (d * (x - e) - c * (y - f)) * per - texture.left / texture.pitch;
    let v = (a * (y - f) - b * (x - e)) * per - texture.top / texture.pitch;
    let at = row * columns + from;
    for (let column = from; column <= to; column++, at++, u += stepU, v += stepV) {
      let beyond = 0;
      let tu = u;
      let tv = v;
      if (tu < 0 || tv < 0 || tu > last || tv > last) {
        tu = Math.max(0, Math.min(tu, last));
        tv = Math.max(0, Math.min(tv, last));
        beyond = Math.sqrt((u - tu) * (u - tu) + (v - tv) * (v - tv)) * texture.pitch;
      }
      const iu = tu < last ? tu | 0 : last - 1;
      const iv = tv < last ? tv | 0 : last - 1;
      const i = iv * side + iu;
      const fu = tu - iu;
      const fv = tv - iv;
      const upper = texels[i]! + (texels[i + 1]! - texels[i]!) * fu;
      const lower = texels[i + side]! + (texels[i + side + 1]! - texels[i + side]!) * fu;
      const distance = (upper + (lower - upper) * fv + beyond) * scale - extra;
      if (distance < values[at]!) values[at] = distance;
    }
  }
}
