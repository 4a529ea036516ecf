import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shareLevels } from "../../../src/output/png/levels.ts";
import { over, solid } from "../../../src/output/png/mix.ts";
import { paletteBytes } from "../../../src/output/png/palette.ts";

/** Shares by role that a mix stands for. */
const sharesOf = (mix: number): Map<number, number> => {
  const [low, high, share] = [mix >> 14, (mix >> 8) & 63, (mix & 255) / 255];
  return low === high
    ? new Map([[low, 1]])
    : new Map([
        [low, 1 - share],
        [high, share],
      ]);
};

const stroke = fc.record({ role: fc.integer({ min: 0, max: 63 }), cover: fc.integer({ min: 1, max: 255 }) });

describe("painting over a pixel", () => {
  it("is Porter and Duff's over (1984) as long as two roles are in it", () => {
    fc.assert(
      fc.property(
        fc.array(stroke, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 63 }),
        (strokes, other) => {
          let mix = solid(0);
          const truth = new Map([[0, 1]]);
          for (const { role, cover } of strokes) {
            const one = role % 2 === 0 ? 0 : other;
            mix = over(mix, one, cover);
            for (const [r, share] of truth) truth.set(r, share * (1 - cover / 255));
            truth.set(one, (truth.get(one) ?? 0) + cover / 255);
          }
          const got = sharesOf(mix);
          for (const r of [0, other])
            expect(Math.abs((got.get(r) ?? 0) - (truth.get(r) ?? 0))).toBeLessThan(strokes.length / 255);
        },
      ),
      { seed: 1, numRuns: 500 },
    );
  });

  it("keeps the two largest where three meet, in their proportion", () => {
    const two = over(solid(1), 2, 100); // 155 : 100
    const third = over(two, 3, 51); // a fifth: 124 : 80 : 51
    expect([...sharesOf(third).keys()]).toEqual([1, 2]);
    expect(sharesOf(third).get(2)).toBeCloseTo(100 / 255, 2);
    const more = over(two, 3, 128); // 77 : 50 : 128
    expect([...sharesOf(more).keys()]).toEqual([1, 3]);
    expect(sharesOf(more).get(3)).toBeCloseTo(128 / 205, 2);
  });

  it("shows the last role alone when it covers all", () => {
    fc.assert(
      fc.property(fc.array(stroke), fc.integer({ min: 0, max: 63 }), (strokes, role) => {
        const mix = strokes.reduce((m, s) => over(m, s.role, s.cover), solid(0));
        expect(over(mix, role, 255)).toBe(solid(role));
      }),
      { seed: 2 },
    );
  });
});

describe("the palette", () => {
  const counted = (pairs: readonly (readonly [number, number, number])[]): Float64Array => {
    const out = new Float64Array(4096);
    for (const [a, b, n] of pairs) out[a * 64 + b] = n;
    return out;
  };
  const stepsOf = (levels: ReturnType<typeof shareLevels>, a: number, b: number): number =>
    levels.low.filter((low, e) => low === a && levels.high[e] === b && levels.step[e]! > 0).length;

  it("is exact to 8 bits where only two roles meet", () => {
    const levels = shareLevels(2, counted([[0, 1, 5]]));
    const bytes = paletteBytes(levels, ["#000000", "#ffffff"]);
    for (let share = 0; share <= 255; share++)
      expect(bytes[levels.entryOf[over(solid(0), 1, share)]! * 3]).toBe(share);
  });

  it("holds only the inks where nothing mixes", () => {
    const bytes = paletteBytes(shareLevels(3, counted([])), ["#102030", "#405060", "#708090"]);
    expect([...bytes]).toEqual([16, 32, 48, 64, 80, 96, 112, 128, 144]);
  });

  it("gives more steps to pairs that meet more, and every entry away", () => {
    const levels = shareLevels(
      4,
      counted([
        [0, 1, 8000],
        [0, 2, 1000],
        [2, 3, 1],
      ]),
    );
    expect(levels.low.length).toBe(256);
    // The sum of n/k² is least where k goes with the cube root of n.
    expect(stepsOf(levels, 0, 1) / stepsOf(levels, 0, 2)).toBeCloseTo(2, 1);
    expect(stepsOf(levels, 2, 3)).toBeGreaterThan(3);
  });

  it("maps a mix to its nearest entry, for 60 roles too, of which every two meet", () => {
    const pairs = Array.from({ length: 60 }, (_, a) =>
      Array.from({ length: 60 - a - 1 }, (_, k) => [a, a + k + 1, 1000 - a - k] as const),
    ).flat();
    const levels = shareLevels(60, counted(pairs));
    expect(levels.low.length).toBe(256);
    for (const [a, b] of pairs) {
      const steps = stepsOf(levels, a, b);
      for (const share of [1, 60, 127, 128, 200, 254]) {
        const entry = levels.entryOf[(a << 14) | (b << 8) | share]!;
        const shown =
          levels.low[entry] === levels.high[entry]
            ? levels.low[entry] === b
              ? 1
              : 0
            : levels.step[entry]! / levels.of[entry]!;
        expect([a, b]).toContain(levels.low[entry]);
        expect(Math.abs(shown - share / 255)).toBeLessThanOrEqual(0.5 / (steps + 1) + 1e-9);
      }
    }
  });
});
