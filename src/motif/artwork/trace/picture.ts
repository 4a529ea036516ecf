/** Pixels that a program has already: rows from the top, each pixel red, green, blue and alpha, 0 to 255, as in sRGB. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array | Uint8ClampedArray;
}

/** A picture as it was read. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue and alpha of 8 bits, not multiplied. */
  readonly data: Uint8Array | Uint8ClampedArray;
  /** Pixels in a mm across and down, where the file tells. */
  readonly perMm?: number;
  readonly perMmDown?: number;
  /** What a user should know about the file. */
  readonly notes: readonly string[];
}
