import { describe, expect, it } from "vitest";
import { disc, ring } from "../../layout/toss/fixtures.ts";
import { at, hexagons, motifOf, squares, straight, tileOf } from "./given.ts";

const dots = (r: number) => [motifOf("dot", disc(r))];

describe("ink coverage", () => {
  it("of discs in a square lattice is π r² / a², however many are in the block", () => {
    for (const times of [1, 3]) {
      const { arrangement, places } = squares(20, times);
      expect(tileOf(dots(6), places, arrangement).figures.inkCoverage).toBeCloseTo((Math.PI * 36) / 400, 3);
    }
  });

  it("leaves open what is knocked out", () => {
    const { figures } = tileOf([motifOf("ring", ring(8, 5))], [at(10, 10)], straight(30, 20));
    expect(figures.inkCoverage).toBeCloseTo((Math.PI * (64 - 25)) / 600, 3);
  });

  it("counts what two motifs share but once: discs a radius apart cover 2 π r² less the lens between them", () => {
    const r = 8;
    const { figures } = tileOf(dots(r), [at(12, 20), at(12 + r, 20)], straight(50, 40));
    // The lens of two circles of radius r a radius apart: r² (2π/3 - √3/2).
    const union = r * r * (2 * Math.PI - (2 * Math.PI) / 3 + Math.sqrt(3) / 2);
    expect(Math.abs(figures.inkCoverage - union / 2000)).toBeLessThan(0.004);
    expect(figures.clearance).toBe(0);
    expect(figures.offsetCoverage).toBe(Math.round(figures.inkCoverage * 1e4) / 1e4);
  });
});

// Densities of the two lattice packings of discs: Thue 1890, Lagrange 1773.
describe("offset coverage", () => {
  it.each([3, 6, 9])("of discs of radius %i mm is that of the packing they would touch in", (r) => {
    const { arrangement, places } = squares(20, 2);
    expect(tileOf(dots(r), places, arrangement).figures.offsetCoverage).toBeCloseTo(Math.PI / 4, 2);
    const hexagonal = tileOf(dots(r), [at(5, 5)], hexagons(20)).figures;
    expect(hexagonal.offsetCoverage).toBeCloseTo(Math.PI / Math.sqrt(12), 2);
  });

  it("is right for many sizes of one motif, by the formula for each", () => {
    const places = Array.from({ length: 9 }, (_, i) =>
      at(10 + (i % 3) * 20, 10 + Math.floor(i / 3) * 20, { scale: 0.5 + i / 20 }),
    );
    const { figures } = tileOf(dots(6), places, straight(60, 60));
    const grown = places.reduce((sum, { scale }) => {
      const r = 6 * scale + figures.clearance / 2;
      return sum + Math.PI * r * r;
    }, 0);
    expect(figures.offsetCoverage).toBeCloseTo(grown / 3600, 2);
  });
});
