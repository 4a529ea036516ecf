import type { BitWriter } from "./bits.ts";
import { writeCodes } from "./codes.ts";
import { codeLengths, codesFor } from "./huffman.ts";
import { distanceSymbol, type LengthTable, LONGEST } from "./lengths.ts";

/** A token is a byte, or one of these plus the length of a match: at the near distance, or at the block's far one. */
export const NEAR = 256;
export const FAR = 1024;

/**
 * Writes `used` tokens as one block with codes of its own (RFC 1951, 3.2.7), not marked as the last.
 * @param near distance of near matches, 1 or 3: such distances are a symbol without bits of their own
 * @param far distance of far matches
 */
export function writeBlock(
  out: BitWriter,
  lengths: LengthTable,
  tokens: Uint16Array,
  used: number,
  near: 1 | 3,
  far: number,
): void {
  const { symbol, extra, value } = lengths;
  const [farSymbol, farExtra, farValue] = distanceSymbol(Math.max(1, far));
  const [nearSymbol] = distanceSymbol(near);
  const counts = new Uint32Array(FAR + LONGEST + 1);
  for (let i = 0; i < used; i++) counts[tokens[i]!]!++;
  const literals = new Uint32Array(286);
  const distances = new Uint32Array(30);
  literals.set(counts.subarray(0, 256));
  literals[256] = 1;
  for (let n = 3; n <= LONGEST; n++) {
    literals[symbol[n]!]! += counts[NEAR + n]! + counts[FAR + n]!;
    distances[nearSymbol]! += counts[NEAR + n]!;
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
    bitsOf[NEAR + n] = bits + distanceBits[nearSymbol]!;
    codeOf[NEAR + n] = code | (distanceCodes[nearSymbol]! << bits);
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
