import type { BitWriter } from "./bits.ts";
import { codeLengths, codesFor } from "./huffman.ts";

/** Order in which the lengths of the code-length code are sent (RFC 1951, 3.2.7). */
const ORDER = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];

/** Starts a block that is not the last and sends the code lengths of its two codes. */
export function writeCodes(out: BitWriter, literalBits: Uint8Array, distanceBits: Uint8Array): void {
  const literals = Math.max(257, usedOf(literalBits));
  const distances = Math.max(1, usedOf(distanceBits));
  const lengths = [...literalBits.subarray(0, literals), ...distanceBits.subarray(0, distances)];
  const symbols = runLengths(lengths);
  const counts = new Uint32Array(19);
  for (const [symbol] of symbols) counts[symbol]!++;
  const bits = codeLengths(counts, 7);
  const codes = codesFor(bits);
  const sent = Math.max(4, usedOf(ORDER.map((symbol) => bits[symbol]!)));
  out.put(0b100, 3);
  out.put(literals - 257, 5);
  out.put(distances - 1, 5);
  out.put(sent - 4, 4);
  for (const symbol of ORDER.slice(0, sent)) out.put(bits[symbol]!, 3);
  for (const [symbol, extra, value] of symbols) {
    out.put(codes[symbol]!, bits[symbol]!);
    out.put(value, extra);
  }
}

/** How many lengths are left when the zeros at the end are dropped. */
function usedOf(lengths: ArrayLike<number>): number {
  let used = lengths.length;
  while (used > 0 && lengths[used - 1] === 0) used--;
  return used;
}

/** Code lengths as symbols of the code-length code: 16 repeats the last, 17 and 18 are runs of 0. */
function runLengths(lengths: readonly number[]): [symbol: number, extra: number, value: number][] {
  const out: [number, number, number][] = [];
  for (let i = 0; i < lengths.length; ) {
    const length = lengths[i]!;
    let end = i + 1;
    while (end < lengths.length && lengths[end] === length) end++;
    if (length !== 0) {
      out.push([length, 0, 0]);
      i++;
    }
    while (end - i > 2) {
      const most = length === 0 ? 138 : 6;
      const n = Math.min(most, end - i);
      out.push(length !== 0 ? [16, 2, n - 3] : n > 10 ? [18, 7, n - 11] : [17, 3, n - 3]);
      i += n;
    }
    for (; i < end; i++) out.push([length, 0, 0]);
  }
  return out;
}
