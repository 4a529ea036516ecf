import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { codeLengths, codesFor } from "../../../src/output/png/huffman.ts";

const kraft = (lengths: Uint8Array): number =>
  Array.from(lengths).reduce((sum, length) => sum + (length > 0 ? 2 ** -length : 0), 0);

describe("prefix codes", () => {
  it("are the ones of the example in RFC 1951, 3.2.2 (bits reversed)", () => {
    const codes = codesFor(Uint8Array.of(3, 3, 3, 3, 3, 2, 4, 4));
    const forward = ["010", "011", "100", "101", "110", "00", "1110", "1111"];
    const reversed = forward.map((code) => Number.parseInt([...code].reverse().join(""), 2));
    expect(Array.from(codes)).toEqual(reversed);
  });

  it("are complete, within the limit, and shorter for what is more frequent", () => {
    const weights = fc.array(fc.oneof(fc.constant(0), fc.nat(50), fc.nat(60_000)), {
      minLength: 2,
      maxLength: 286,
    });
    fc.assert(
      fc.property(weights, (counts) => {
        const lengths = codeLengths(Uint32Array.from(counts), 15);
        const used = counts.filter((count) => count > 0).length;
        expect(kraft(lengths)).toBe(used === 0 ? 0 : used === 1 ? 0.5 : 1);
        expect(Math.max(...lengths)).toBeLessThanOrEqual(15);
        counts.forEach((count, i) => {
          expect(lengths[i]! > 0).toBe(count > 0);
        });
        const order = counts.map((_, i) => i).filter((i) => counts[i]! > 0);
        order.sort((a, b) => counts[b]! - counts[a]!);
        for (let k = 1; k < order.length; k++)
          if (counts[order[k]!]! < counts[order[k - 1]!]!)
            expect(lengths[order[k]!]!).toBeGreaterThanOrEqual(lengths[order[k - 1]!]!);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it("cost what Huffman (1952) says: for 5 9 12 13 16 45, 224 bits", () => {
    const counts = Uint32Array.of(5, 9, 12, 13, 16, 45);
    const lengths = codeLengths(counts, 15);
    expect(counts.reduce((sum, count, i) => sum + count * lengths[i]!, 0)).toBe(224);
  });

  it("stay within 7 bits for Fibonacci counts, which would want 19", () => {
    const counts = new Uint32Array(20).fill(1);
    for (let i = 2; i < 20; i++) counts[i] = counts[i - 1]! + counts[i - 2]!;
    expect(Math.max(...codeLengths(counts, 31))).toBe(19);
    const limited = codeLengths(counts, 7);
    expect(Math.max(...limited)).toBeLessThanOrEqual(7);
    expect(kraft(limited)).toBe(1);
  });
});
