import type { Size } from "../../geometry/lattice.ts";

/** Parts that a pixel is cut into along each axis: coordinates are fixed-point with 8 bits of fraction. */
export const PARTS = 256;

/** Rows painted at a time: any number gives the same bytes. */
export const ROWS = 64;

/** The pixels of one block. */
export interface Grid {
  /** Pixels across and down. */
  readonly width: number;
  readonly height: number;
  /** The block, in µm. */
  readonly block: Size;
}
