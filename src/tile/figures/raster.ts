/** The block's ink as pixels. The block closes on itself, and so do rows and columns. */
export interface Raster {
  /** Powers of two. */
  readonly columns: number;
  readonly rows: number;
  /** Size of a pixel (µm). */
  readonly width: number;
  readonly height: number;
  /** 1 where the pixel's middle lies in ink, plus 2 where an outline passes through the pixel. */
  readonly ink: Uint8Array;
}
