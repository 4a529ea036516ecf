import type { BitWriter } from "./bits.ts";
import { writeCodes } from "./codes.ts";
import { codeLengths, codesFor } from "./huffman.ts";
import { distanceSymbol, type LengthTable, LONGEST } from "./lengths.ts";

/** A token is a byte, or one of these plus the length of a match: at distance 1, or at the block's far distance. */
export const NEAR = 256;
export const FAR = 1024;

/** Writes `used` tokens as one block with codes of its own (RFC 1951, 3.2.7), not marked as the last. */
export function writeBlock(
  out: BitWriter,
  lengths: LengthTable,
  tokens: Uint16Array,
  used: number,
  distance: number,
): void {
  const { symbol, extra, value } = lengths;
  const [farSymbol, farExtra, farValue] = distanceSymbol(Math.max(1, distance));
  const counts = new Uint32Array(FAR + LONGEST + 1);
  for (let i = 0; i < used; i++) counts[tokens[i]!]!++;
  const literals = new Uint32Array(286);
  const distances = new Uint32Array(30);
  literals.set(counts.subarray(0, 256));
  literals[256] = 1;
  for (let n = 3; n <= LONGEST; n++) {
    literals[symbol[n]!]! += counts[NEAR + n]! + counts[FAR + n]!;
    distances[0]! += counts[NEAR + n]!;
    distances[farSymbol]! += counts[FAR + n]!;
  }
  const literalBits = codeLengths(literals, 15);
  const distanceBits = codeLengths(distances, 15);
  const literalCodes = codesFor(literalBits);
  const distanceCodes = codesFor(distanceBits);
  writeCodes(out, literalBits, distanceBits);

  // All that a token takes, but for the bits of a far distance, as one number: 15 + 5 + 1 bits at the most.
  const bitsOf = new Uint8Array(counts.length);
  const codeOf = new Uint32Array(counts.length);
  bitsOf.set(literalBits.subarray(0, 256));
  codeOf.set(literalCodes.subarray(0, 256));
  for (let n = 3; n <= LONGEST; n++) {
    const short = literalBits[symbol[n]!]!;
    const bits = short + extra[n]!;
    const code = literalCodes[symbol[n]!]! | (value[n]! << short);
    bitsOf[NEAR + n] = bits + distanceBits[0]!;
    codeOf[NEAR + n] = code | (distanceCodes[0]! << bits);
    bitsOf[FAR + n] = bits + distanceBits[farSymbol]!;
    codeOf[FAR + n] = code | (distanceCodes[farSymbol]! << bits);
  }
  for (let i = 0; i < used; i++) {
    const token = tokens[i]!;
    out.put(codeOf[token]!, bitsOf[token]!);
    if (token > FAR) out.put(farValue, farExtra);
  }
  out.put(literalCodes[256]!, literalBits[256]!);
}
