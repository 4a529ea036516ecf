import type { Size } from "../../geometry/lattice.ts";
import { adlerOf, joinSums, noSums } from "./adler.ts";
import { joinBytes } from "./chunks.ts";
import { type Picture, ROWS_A_STEP } from "./picture.ts";
import { type Packed, type PixelBytes, rowStream } from "./row-stream.ts";

/** How a picture's mixes become bytes. */
export interface Values {
  /** Mix → palette entry, or red, green and blue in 24 bits. */
  readonly of: (mix: number) => number;
  readonly bytes: PixelBytes;
  /** Whether the picture's runs are given up as they are read. */
  readonly last: boolean;
}

/**
 * The rows of a cut of `pixels`, as a zlib stream (RFC 1950) in pieces, each row after a filter byte of 0. The block is
 * compressed once: to the right, rows point back at their first block; below, the compressed rows are simply there
 * again, in two parts where the cut goes through a block. Yields the share that is done now and then.
 */
export function* encode(picture: Picture, pixels: Size, values: Values): Generator<number, Uint8Array[]> {
  const { width, height } = picture.grid;
  const shown = Math.min(height, pixels.height);
  const rest = (pixels.height - shown) % height; // rows of the last block, which the cut goes through
  const readRow = picture.runs.reader(values.last);
  const { of, bytes } = values;
  const parts: Packed[] = [];
  for (const [from, to] of [
    [0, rest],
    [rest, shown],
  ] as const) {
    if (from === to) continue;
    const stream = rowStream(width, pixels.width, bytes);
    for (let y = from; y < to; y++) {
      stream.row((put) => readRow((mix, length) => put(of(mix), length)));
      if (y % ROWS_A_STEP === 0) yield y / shown;
    }
    parts.push(stream.finish());
  }
  const order: Packed[] = [];
  for (let i = Math.floor(pixels.height / height); i > 0 || order.length === 0; i--) order.push(...parts);
  if (rest > 0) order.push(parts[0]!);
  return zlibStream(order);
}

/** 32 KiB window, fastest method; the parts; an empty stored block marked as the last; the checksum. */
export function zlibStream(parts: readonly Packed[]): Uint8Array[] {
  const check = new DataView(new ArrayBuffer(4));
  check.setUint32(0, adlerOf(parts.reduce((sums, part) => joinSums(sums, part.sums), noSums)));
  const pieces = parts.map((part) => part.bytes);
  pieces[0] = joinBytes([[0x78, 0x01], pieces[0]!]);
  const end = [0x01, 0, 0, 0xff, 0xff, ...new Uint8Array(check.buffer)];
  pieces.push(joinBytes([pieces.pop()!, end]));
  return pieces;
}
