import type { Mix } from "./mix.ts";
import { solid } from "./mix.ts";

/**
 * A band of pixel rows being painted. A row is kept as runs: where one starts, a bit of `marks` is set and
 * `mixes` holds what it shows; what `mixes` holds elsewhere means nothing.
 */
export interface Band {
  readonly width: number;
  readonly rows: number;
  /** 32-bit words that hold a row's bits, one bit a pixel. */
  readonly words: number;
  /** Signed area of the layer being added, per pixel: running sums along a row are its coverage. */
  readonly sums: Int32Array;
  /** Bits of the pixels where `sums` may not be 0. */
  readonly touched: Int32Array;
  readonly marks: Int32Array;
  readonly mixes: Int32Array;
}

/** What a running sum of `sums` is for a pixel that is covered once: 256 sub-rows, 2 · 256 sub-columns. */
export const FULL = 0x20000;

export function createBand(width: number, rows: number): Band {
  const words = (width + 31) >> 5;
  return {
    width,
    rows,
    words,
    sums: new Int32Array(rows * width),
    touched: new Int32Array(rows * words),
    marks: new Int32Array(rows * words),
    mixes: new Int32Array(rows * width),
  };
}

/** Makes every row one run of `role`. */
export function clearBand(band: Band, role: number): void {
  band.marks.fill(0);
  for (let row = 0; row < band.rows; row++) {
    band.marks[row * band.words] = 1;
    band.mixes[row * band.width] = solid(role);
  }
}

/** Calls `visit` for every run of a row, from left to right. */
export function eachRun(band: Band, row: number, visit: (mix: Mix, length: number) => void): void {
  const { marks, mixes, width, words } = band;
  let start = 0;
  let mix = mixes[row * width]!;
  for (let word = 0; word < words; word++) {
    let bits = marks[row * words + word]!;
    if (word === 0) bits &= ~1;
    while (bits !== 0) {
      const lowest = bits & -bits;
      bits ^= lowest;
      const at = word * 32 + 31 - Math.clz32(lowest);
      visit(mix, at - start);
      start = at;
      mix = mixes[row * width + at]!;
    }
  }
  visit(mix, width - start);
}
