import type { Images } from "../../geometry/images.ts";
import type { Copy } from "./board.ts";
import type { Grid } from "./distance-map.ts";

/**
 * Distance (µm) from every cell of a window to the nearest motif, up to a cap: says at once where there is no
 * room. The window is the unit and a margin, so that a disc beside the unit can be looked up without wrapping.
 */
export interface Field extends Grid {
  /** The least of the distances of motifs less what each wants beyond the gap. */
  readonly values: Float32Array;
  /** The least distance alone, to be held against what a newcomer wants itself; the same array where no motif wants anything. */
  readonly plain: Float32Array;
  /** What the cells hold without any motif of the toss. */
  readonly ground: Ground;
  /** No cell holds more than this. */
  readonly cap: number;
  /** The most that any motif wants beyond the gap. */
  readonly extra: number;
}

/** See {@link Field.ground}. */
interface Ground {
  readonly values: Float32Array;
  readonly plain: Float32Array;
}

/** The grid of a field over `window` (minX, minY, maxX, maxY). */
export function gridOver(window: Float64Array, cell: number): Grid {
  const [left, top, right, bottom] = window as unknown as [number, number, number, number];
  const columns = Math.ceil((right - left) / cell) + 1;
  const rows = Math.ceil((bottom - top) / cell) + 1;
  return { cell, left, top, columns, rows };
}

/** Distances that lower a field's ground: its values hold no more than distance + `values`, the plain ones distance + `plain`. */
export interface Lower {
  readonly distances: Float32Array;
  readonly values: number;
  readonly plain: number;
}

/**
 * An empty field over a grid, for motifs that want up to `extra` beyond the gap.
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
  extra: number,
  lower: readonly Lower[],
): Field {
  const groundWith = (apart: number, which: "values" | "plain"): Float32Array =>
    lowered(ownRoom(images, grid, cap, apart), lower, which);
  const values = groundWith(gap, "values");
  const plain = extra > 0 ? groundWith(gap + extra, "plain") : values;
  const free = values.slice();
  return {
    ...grid,
    values: free,
    plain: extra > 0 ? plain.slice() : free,
    ground: { values, plain },
    cap,
    extra,
  };
}

/** What a field holds where only a motif's own copies, `gap` from it, bound it. */
function ownRoom(images: Images, grid: Grid, cap: number, gap: number): Float32Array {
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
  return ground;
}

function lowered(ground: Float32Array, lower: readonly Lower[], which: "values" | "plain"): Float32Array {
  for (const { distances, [which]: more } of lower)
    for (let at = 0; at < ground.length; at++) ground[at] = Math.min(ground[at]!, distances[at]! + more);
  return ground;
}

/** Room at a cell for a motif that wants `extra` beyond the gap itself: of two motifs, the larger wish counts. */
export const roomAt = ({ values, plain }: Field, cell: number, extra: number): number =>
  extra > 0 ? Math.min(values[cell]!, plain[cell]! - extra) : values[cell]!;

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
export function clearPatch({ values, plain, ground, columns }: Field, patch: Patch): void {
  for (let row = patch.fromRow; row <= patch.toRow; row++) {
    const from = row * columns + patch.fromColumn;
    const to = row * columns + patch.toColumn + 1;
    if (to <= from) continue;
    values.set(ground.values.subarray(from, to), from);
    if (plain !== values) plain.set(ground.plain.subarray(from, to), from);
  }
}

/** Puts a whole field back to its ground. */
export function clearField({ values, plain, ground }: Field): void {
  values.set(ground.values);
  if (plain !== values) plain.set(ground.plain);
}

/** Lowers the field around one copy, within a patch where one is given. */
export function paint(field: Field, copy: Copy, within?: Patch): void {
  const { cell, left, top, columns, values, plain, cap } = field;
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
      const distance = (upper + (lower - upper) * fv + beyond) * scale;
      if (distance - extra < values[at]!) values[at] = distance - extra;
      if (distance < plain[at]!) plain[at] = distance;
    }
  }
}
