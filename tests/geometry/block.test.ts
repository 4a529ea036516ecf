import fc from "fast-check";
import { expect, it } from "vitest";
import { blockOf, commonDivisor, cross, shortestPair } from "../../src/geometry/block.ts";
import type { Vector } from "../../src/geometry/lattice.ts";

const whole = fc.integer({ min: -12, max: 12 });
const vector = fc.tuple(whole, whole);

it("the block is the smallest upright rectangle of lattice vectors, by brute force", () => {
  fc.assert(
    fc.property(vector, vector, (a, b) => {
      fc.pre(cross(a, b) !== 0);
      let [width, height] = [Infinity, Infinity];
      for (let i = -24; i <= 24; i++)
        for (let j = -24; j <= 24; j++) {
          const [x, y] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
          if (y === 0 && x > 0) width = Math.min(width, x);
          if (x === 0 && y > 0) height = Math.min(height, y);
        }
      expect(blockOf(a, b)).toEqual({ width, height });
    }),
    { seed: 3, numRuns: 200 },
  );
});

it("the shortest pair spans the same lattice, and nothing in it is shorter", () => {
  const length = ([x, y]: Vector): number => x * x + y * y;
  fc.assert(
    fc.property(vector, vector, (a, b) => {
      fc.pre(cross(a, b) !== 0);
      const [short, long] = shortestPair(a, b);
      expect(Math.abs(cross(short, long))).toBe(Math.abs(cross(a, b)));
      const inLattice = (v: Vector): boolean =>
        Number.isInteger(cross(v, b) / cross(a, b)) && Number.isInteger(cross(a, v) / cross(a, b));
      expect(inLattice(short) && inLattice(long)).toBe(true);
      for (let i = -3; i <= 3; i++)
        for (let j = -3; j <= 3; j++) {
          const v: Vector = [i * short[0] + j * long[0], i * short[1] + j * long[1]];
          if (i !== 0 || j !== 0) expect(length(v)).toBeGreaterThanOrEqual(length(short));
          if (j !== 0) expect(length(v)).toBeGreaterThanOrEqual(length(long));
        }
    }),
    { seed: 4, numRuns: 200 },
  );
});

it("the common divisor is never negative", () => {
  expect([commonDivisor(-12, 18), commonDivisor(0, -7), commonDivisor(0, 0)]).toEqual([6, 7, 0]);
});
