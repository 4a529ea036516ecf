import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distanceTransform } from "../../../src/tile/figures/distance-transform.ts";
import { disc } from "../../layout/toss/fixtures.ts";
import { at, hexagons, motifOf, squares, straight, tileOf } from "./given.ts";

describe("the distance transform", () => {
  it("is what trying every pixel gives, on a torus of oblong pixels", () => {
    const size = fc.constantFrom(4, 8, 16);
    fc.assert(
      fc.property(size, size, fc.infiniteStream(fc.nat(30)), (columns, rows, stream) => {
        const ink = Uint8Array.from({ length: columns * rows }, () => (stream.next().value === 0 ? 1 : 0));
        const raster = { columns, rows, width: 3, height: 5, ink };
        const squared = distanceTransform(raster);
        for (let i = 0; i < ink.length; i++) {
          let least = Infinity;
          for (let j = 0; j < ink.length; j++) {
            if (ink[j] === 0) continue;
            const across = Math.abs((i % columns) - (j % columns));
            const down = Math.abs(Math.floor(i / columns) - Math.floor(j / columns));
            const x = 3 * Math.min(across, columns - across);
            const y = 5 * Math.min(down, rows - down);
            least = Math.min(least, x * x + y * y);
          }
          expect(squared[i]).toBeCloseTo(least, 6);
        }
      }),
      { numRuns: 60, seed: 3 },
    );
  });
});

describe("the largest hole", () => {
  const dot = (r: number) => [motifOf("dot", disc(r))];

  it("among discs in a lattice is known: a/√2 - r in squares, a/√3 - r in hexagons, the half diagonal - r in oblongs", () => {
    for (const r of [1, 4, 8]) {
      const { arrangement, places } = squares(20, 3);
      const square = tileOf(dot(r), places, arrangement).figures.largestHole;
      expect(square.radius).toBeCloseTo(20 / Math.SQRT2 - r, 1);
      expect((square.x % 20) - 10).toBeCloseTo(0, 1);
      expect((square.y % 20) - 10).toBeCloseTo(0, 1);
      const hexagonal = tileOf(dot(r), [at(3, 3)], hexagons(20)).figures.largestHole;
      expect(hexagonal.radius).toBeCloseTo(20 / Math.sqrt(3) - r, 1);
      const oblong = tileOf(dot(r), [at(3, 3)], straight(24, 70)).figures.largestHole;
      expect(oblong.radius).toBeCloseTo(37 - r, 1);
    }
  });

  it("is where the one missing disc was, and the 95th percentile does not move", () => {
    const { arrangement, places } = squares(12, 14);
    const missing = places.filter((_, i) => i !== 45);
    const { largestHole, largeHoles } = tileOf(dot(3), missing, arrangement).figures;
    expect(largestHole.radius).toBeCloseTo(12 - 3, 1);
    expect([largestHole.x, largestHole.y].map((v) => Math.round(v))).toEqual([36, 36]);
    expect(largeHoles).toBeCloseTo(12 / Math.SQRT2 - 3, 1);
  });

  it("is no smaller than any circle that tries on a fine grid find, and truly empty", () => {
    const place = fc.tuple(fc.integer({ min: 0, max: 79 }), fc.integer({ min: 0, max: 59 }));
    fc.assert(
      fc.property(fc.uniqueArray(place, { minLength: 1, maxLength: 12, selector: String }), (given) => {
        const room = (x: number, y: number): number =>
          Math.min(
            ...given.map(([u, v]) => {
              const across = Math.abs(x - u) % 80;
              const down = Math.abs(y - v) % 60;
              return Math.hypot(Math.min(across, 80 - across), Math.min(down, 60 - down)) - 2;
            }),
          );
        const places = given.map(([x, y]) => at(x, y));
        const { radius, x, y } = tileOf(dot(2), places, straight(80, 60)).figures.largestHole;
        let best = 0;
        for (let u = 0; u < 80; u += 0.5) for (let v = 0; v < 60; v += 0.5) best = Math.max(best, room(u, v));
        expect(radius).toBeGreaterThan(best - 0.01);
        expect(radius).toBeLessThan(best + 0.36);
        expect(Math.abs(room(x, y) - radius)).toBeLessThan(0.026);
      }),
      { numRuns: 25, seed: 5 },
    );
  });

  it("is none where all is ink", () => {
    const full = tileOf(dot(15), [at(0, 0)], straight(20, 20)).figures;
    expect(full.largestHole.radius).toBe(0);
    expect(full.largeHoles).toBe(0);
    expect(full.inkCoverage).toBe(1);
  });
});
