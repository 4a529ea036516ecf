import type { Size } from "../../geometry/lattice.ts";

/** A block cut into pixels. The block closes on itself, and so do rows and columns. */
export interface PixelGrid {
  /** Powers of two. */
  readonly columns: number;
  readonly rows: number;
  /** Size of a pixel (µm). */
  readonly width: number;
  readonly height: number;
}

/** The block's ink as pixels. */
export interface Raster extends PixelGrid {
  /** 1 where the pixel's middle lies in ink, plus 2 where an outline passes through the pixel. */
  readonly ink: Uint8Array;
}

/** A grid of at least so many pixels, and fewer than twice as many, as nearly square as powers of two allow. */
export function gridOf(block: Size, pixels: number): PixelGrid {
  let [columns, rows] = [1, 1];
  while (columns * rows < pixels)
    if (block.width * rows >= block.height * columns) columns *= 2;
    else rows *= 2;
  return { columns, rows, width: block.width / columns, height: block.height / rows };
}
