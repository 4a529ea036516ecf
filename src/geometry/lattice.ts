import type { Matrix } from "./matrix.ts";
import type { Region } from "./region.ts";

/** A pair of whole micrometres. */
export type Vector = readonly [x: number, y: number];

/** Width and height in whole micrometres. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * The translations of a repeat: every point of the pattern recurs at i·a + j·b.
 * `block` is the smallest upright rectangle that repeats straight (µm).
 */
export interface Lattice {
  readonly a: Vector;
  readonly b: Vector;
  readonly block: Size;
}

/**
 * How a repeat lays its unit out: the cell's translations, and the operations that complete the cell from
 * the unit (the identity first). Operations that mirror, or turn by quarters, are whole-number matrices, so copies
 * are exact; those that turn by thirds and sixths are not, and each image is rounded to whole µm once.
 */
export interface Arrangement {
  /** What the designer fills (µm), or the box around it. */
  readonly unit: Size;
  /** What the designer fills, where it is no rectangle: the origins of all motifs lie in it. */
  readonly region?: Region;
  readonly lattice: Lattice;
  readonly operations: readonly Matrix[];
  /** How far lengths were changed to close on whole µm, as a share of what was asked for. Default 0: not at all. */
  readonly distortion?: number;
  /** Set when the pattern is a border: it repeats left to right only, and nothing may cross its long edges. */
  readonly border?: Border;
}

/** What makes an arrangement a border. */
export interface Border {
  /** Clear ground along the top and the bottom edge (µm). */
  readonly margin: number;
  /** The band itself, or a square that joins two bands at an upper corner of a frame, mirrored about its diagonal. */
  readonly piece: "band" | "left-corner" | "right-corner";
}

/** Area of one cell of a lattice (µm²). */
export const cellAreaOf = ({ a, b }: Pick<Lattice, "a" | "b">): number => Math.abs(a[0] * b[1] - a[1] * b[0]);

/** Area (µm²) that a motif has to itself when there is one: the cell over the number of operations. */
export const groundOf = ({ lattice, operations }: Pick<Arrangement, "lattice" | "operations">): number =>
  cellAreaOf(lattice) / operations.length;

/** Remainder that is never negative. */
export const modulo = (n: number, d: number): number => n - d * Math.floor(n / d);

/** Offsets of all cells of the lattice whose origin lies in one block, the block's own corner first. */
export function cellsInBlock(lattice: Lattice): Vector[] {
  const { a, b, block } = lattice;
  const seen = new Set<string>();
  const cells: Vector[] = [];
  const count = Math.round((block.width * block.height) / cellAreaOf(lattice));
  for (let i = 0; i < count && cells.length < count; i++)
    for (let j = 0; j < count && cells.length < count; j++) {
      const x = modulo(i * a[0] + j * b[0], block.width);
      const y = modulo(i * a[1] + j * b[1], block.height);
      const key = `${x},${y}`;
      if (seen.has(key)) continue;
      seen.add(key);
      cells.push([x, y]);
    }
  return cells;
}
