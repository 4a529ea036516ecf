import { joinSums, noSums, type Sums } from "./adler.ts";
import { type Deflater, deflater } from "./deflate.ts";
import { addSums, sumsOfRun } from "./row-sums.ts";

/** Bytes of a pixel: a palette entry, or red, green and blue. */
export type PixelBytes = 1 | 3;

/** Some rows of a picture, compressed on their own: they point at nothing before them, and may be set down again. */
export interface Packed {
  readonly bytes: Uint8Array;
  readonly sums: Sums;
}

/** Compresses rows, each of them one block's pixels again and again, cut off at the picture's width. */
export interface RowStream {
  /** Adds a row: `read` gives the runs of one block's row. */
  readonly row: (read: (put: (value: number, length: number) => void) => void) => void;
  readonly finish: () => Packed;
}

/** The sums of a filter byte of 0. */
const FILTER: Sums = { plain: 0, weighted: 0, length: 1 };

/** Farthest that a match can point back (RFC 1951, 3.2.5), in bytes. */
const FARTHEST = 32_768;

/**
 * Rows of `width` pixels, `bytes` each, out of blocks `block` pixels wide; a filter byte of 0 goes before each. Pixels
 * beyond the first block are a match that points back at it, so that they cost next to nothing.
 */
export function rowStream(block: number, width: number, bytes: PixelBytes): RowStream {
  const out = deflater(bytes);
  const shown = Math.min(block, width);
  const beyond = width - shown;
  const rest = beyond % block; // of the last block, which the cut goes through
  const times = Math.max(1, Math.floor(width / block));
  const listed = beyond > 0 && (beyond * bytes < 3 || block * bytes > FARTHEST);
  const list: number[] = []; // value and length of each run, where no match can say the rest
  let all = noSums;
  let soFar = noSums; // of the row
  let part = noSums; // of what a last block shows of it
  let x = 0;
  const piece = (value: number, count: number): void => {
    soFar = addSums(soFar, sumsOfRun(value, count, bytes));
    x += count;
    if (x === rest) part = soFar;
    out.run(value, count);
    if (listed) list.push(value, count);
  };
  const put = (value: number, length: number): void => {
    const kept = Math.min(length, shown - x);
    const before = x < rest ? Math.min(kept, rest - x) : 0;
    if (before > 0) piece(value, before);
    if (kept > before) piece(value, kept - before);
  };
  return {
    row(read) {
      soFar = noSums;
      list.length = 0;
      x = 0;
      if (bytes === 1) out.run(0, 1);
      else out.byte(0);
      read(put);
      if (listed) runAgain(out, list, beyond);
      else if (beyond > 0) out.again(block * bytes, beyond * bytes);
      all = joinSums(all, FILTER);
      for (let i = 0; i < times; i++) all = joinSums(all, soFar);
      if (rest > 0) all = joinSums(all, part);
    },
    finish: () => ({ bytes: out.finish(), sums: all }),
  };
}

/** Runs from the first on, round and round, up to `pixels` in all. */
function runAgain(out: Deflater, list: readonly number[], pixels: number): void {
  for (let left = pixels, i = 0; left > 0; i = (i + 2) % list.length) {
    const count = Math.min(left, list[i + 1]!);
    out.run(list[i]!, count);
    left -= count;
  }
}
