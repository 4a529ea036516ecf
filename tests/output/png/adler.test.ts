import { deflateSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adlerOf, joinSums, noSums, type Sums } from "../../../src/output/png/adler.ts";

const ofByte = (byte: number): Sums => ({ plain: byte, weighted: byte, length: 1 });
const ofBytes = (bytes: Iterable<number>): Sums => [...bytes].map(ofByte).reduce(joinSums, noSums);
/** The checksum that zlib itself puts at the end of its stream (RFC 1950). */
const byZlib = (bytes: Uint8Array): number =>
  Buffer.from(deflateSync(bytes)).readUInt32BE(deflateSync(bytes).length - 4);

describe("Adler-32", () => {
  it("is 1 for nothing and 0x11e60398 for the customary word", () => {
    expect(adlerOf(noSums)).toBe(1);
    expect(adlerOf(ofBytes(Buffer.from("Wikipedia")))).toBe(0x11e60398);
  });

  it("of stretches joined is that of the whole, as zlib has it", () => {
    const bytes = fc.uint8Array({ maxLength: 3000 });
    fc.assert(
      fc.property(bytes, bytes, fc.integer({ min: 1, max: 5 }), (a, b, times) => {
        const once = joinSums(ofBytes(a), ofBytes(b));
        const all = Array.from({ length: times }, () => once).reduce(joinSums, noSums);
        expect(adlerOf(all)).toBe(byZlib(Buffer.concat(Array.from({ length: times }, () => [a, b]).flat())));
      }),
      { seed: 3, numRuns: 50 },
    );
  });
});
