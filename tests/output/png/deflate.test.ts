import { constants, deflateRawSync, deflateSync, inflateRawSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adlerOf, joinSums, noSums } from "../../../src/output/png/adler.ts";
import { deflater } from "../../../src/output/png/deflate.ts";
import { sumsOfRun } from "../../../src/output/png/row-sums.ts";
import { chance } from "./tiles.ts";

/** Node's zlib is the judge: an independent reader of RFC 1951. The stream has no last block, so it must not want one. */
const inflated = (blocks: Uint8Array): Uint8Array =>
  inflateRawSync(blocks, { finishFlush: constants.Z_SYNC_FLUSH });

type Piece = { value: number; count: number } | { distance: number; again: number };

function both(pieces: readonly Piece[]): { packed: Uint8Array; plain: Uint8Array } {
  const out = deflater();
  const plain: number[] = [];
  for (const piece of pieces) {
    if ("value" in piece) {
      out.run(piece.value, piece.count);
      for (let i = 0; i < piece.count; i++) plain.push(piece.value);
    } else if (plain.length >= piece.distance) {
      out.again(piece.distance, piece.again);
      for (let i = 0; i < piece.again; i++) plain.push(plain[plain.length - piece.distance]!);
    }
  }
  return { packed: out.finish(), plain: Uint8Array.from(plain) };
}

const run = fc.record({
  value: fc.oneof(fc.integer({ min: 0, max: 255 }), fc.integer({ min: 0, max: 2 })),
  count: fc.oneof(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 1100 })),
});
const again = fc.record({
  distance: fc.integer({ min: 1, max: 32_768 }),
  again: fc.integer({ min: 3, max: 1100 }),
});

describe("the deflater", () => {
  it("gives back any runs", () => {
    fc.assert(
      fc.property(fc.array(run, { maxLength: 300 }), (pieces) => {
        const { packed, plain } = both(pieces);
        expect(Buffer.compare(inflated(packed), plain)).toBe(0);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("gives back any runs with matches among them, at several distances", () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(run, again), { maxLength: 200 }), (pieces) => {
        const { packed, plain } = both(pieces);
        expect(Buffer.compare(inflated(packed), plain)).toBe(0);
      }),
      { seed: 2, numRuns: 200 },
    );
  });

  it("gives back pixels of three bytes, with lone bytes and matches among them, and their Adler-32", () => {
    const pixels = fc.record({
      value: fc.oneof(fc.integer({ min: 0, max: 0xffffff }), fc.constantFrom(0, 0x10203, 0xffffff)),
      count: fc.oneof(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 500 })),
    });
    fc.assert(
      fc.property(fc.array(fc.oneof(pixels, again), { maxLength: 100 }), (pieces) => {
        const out = deflater(3);
        const plain: number[] = [];
        for (const piece of pieces) {
          if ("value" in piece) {
            const { value, count } = piece;
            const bytes = [value >> 16, (value >> 8) & 255, value & 255];
            const sums = sumsOfRun(value, count, 3);
            const run = Buffer.from(Array.from({ length: count }, () => bytes).flat());
            out.run(value, count);
            plain.push(...run);
            // zlib's own checksum at the end of its stream (RFC 1950) is the judge.
            expect(adlerOf(joinSums(noSums, sums))).toBe(
              deflateSync(run).readUInt32BE(deflateSync(run).length - 4),
            );
          } else if (plain.length >= piece.distance) {
            out.again(piece.distance, piece.again);
            for (let i = 0; i < piece.again; i++) plain.push(plain[plain.length - piece.distance]!);
          } else {
            out.byte(7);
            plain.push(7);
          }
        }
        expect(Buffer.compare(inflated(out.finish()), Uint8Array.from(plain))).toBe(0);
      }),
      { seed: 6, numRuns: 60 },
    );
  });

  it.each([1, 2, 3, 4, 257, 258, 259, 260, 261, 262, 516, 517, 518, 519, 1_000_000])(
    "gives back one run of %i",
    (count) => {
      const { packed, plain } = both([{ value: 7, count }]);
      expect(Buffer.compare(inflated(packed), plain)).toBe(0);
    },
  );

  it("gives back every distance at the ends of a distance symbol", () => {
    for (let base = 4; base <= 32_768; base *= 2)
      for (const distance of [base - 1, base, Math.min(32_768, base + 1)]) {
        const { packed, plain } = both([
          { value: 1, count: 5 },
          { value: 2, count: distance - 1 },
          { distance, again: 300 },
        ]);
        expect(Buffer.compare(inflated(packed), plain)).toBe(0);
      }
  });

  it("gives back more than one block of noise, in every one of whose counts all bytes occur", () => {
    const random = chance(4);
    const { packed, plain } = both(
      Array.from({ length: 150_000 }, () => ({ value: Math.floor(random() * 256), count: 1 })),
    );
    expect(Buffer.compare(inflated(packed), plain)).toBe(0);
    expect(packed.length).toBeLessThan(plain.length * 1.01);
  });

  it("gives back counts so uneven that a plain Huffman code would be longer than 15 bits", () => {
    let [a, b] = [1, 1];
    const pieces: Piece[] = [];
    for (let value = 0; value < 24 && pieces.length < 30_000; value++) {
      for (let i = 0; i < Math.min(a, 12_000); i++)
        pieces.push({ value, count: 1 }, { value: 200, count: 1 });
      [a, b] = [b, a + b];
    }
    const { packed, plain } = both(pieces);
    expect(Buffer.compare(inflated(packed), plain)).toBe(0);
  });

  it("does not care how a run is cut up", () => {
    const whole = both([{ value: 3, count: 1000 }]).packed;
    const cut = both([1, 2, 3, 494, 500].map((count) => ({ value: 3, count }))).packed;
    expect(Buffer.compare(whole, cut)).toBe(0);
  });

  it("packs flat pictures about as small as zlib's own run-length mode", () => {
    const random = chance(8);
    const pieces = Array.from({ length: 20_000 }, (_, i) =>
      i % 3 === 0
        ? { value: Math.floor(random() * 4), count: 1 + Math.floor(random() * 400) }
        : { value: 4 + Math.floor(random() * 60), count: 1 },
    );
    const { packed, plain } = both(pieces);
    const zlib = deflateRawSync(plain, { strategy: constants.Z_RLE, level: 9 });
    expect(packed.length).toBeLessThan(zlib.length * 1.02);
  });

  it("is caught when one bit is wrong", () => {
    const { packed, plain } = both([
      { value: 9, count: 100 },
      { value: 1, count: 1 },
      { value: 9, count: 40 },
    ]);
    const broken = packed.slice();
    broken[Math.floor(broken.length / 2)]! ^= 4;
    let same = false;
    try {
      same = Buffer.compare(inflated(broken), plain) === 0;
    } catch {
      same = false;
    }
    expect(same).toBe(false);
  });
});
