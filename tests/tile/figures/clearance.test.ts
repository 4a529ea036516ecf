import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { smallestClearance } from "../../layout/toss/clearance.ts";
import { blossom, crescent, disc, leaf, repeats, ring, sprig } from "../../layout/toss/fixtures.ts";
import { at, hexagons, motifOf, squares, straight, tileOf } from "./given.ts";

const dot = motifOf("dot", disc(6));

describe("clearance", () => {
  it("of discs in a lattice is its shortest vector less two radii, own images alone", () => {
    expect(tileOf([dot], [at(3, 4)], straight(20, 30)).figures.clearance).toBeCloseTo(8, 2);
    expect(tileOf([dot], [at(0, 0)], hexagons(17)).figures.clearance).toBeCloseTo(5, 2);
    const { arrangement, places } = squares(15, 4);
    expect(tileOf([dot], places, arrangement).figures.clearance).toBeCloseTo(3, 2);
  });

  it("is that of the one pair that is nearest, across the edges of the block", () => {
    const places = [at(1, 1), at(58.5, 59), at(30, 30)];
    const apart = Math.sqrt(2.5 * 2.5 + 4) * 1;
    const small = motifOf("dot", disc(1));
    expect(tileOf([small], places, straight(60, 60)).figures.clearance).toBeCloseTo(apart - 2, 2);
  });

  it("is 0 when outlines touch, cross or lie in one another, and not when one lies free in another's hole", () => {
    const clearance = (x: number) =>
      tileOf([dot], [at(20, 20), at(20 + x, 20)], straight(60, 60)).figures.clearance;
    expect(clearance(5)).toBe(0);
    expect(clearance(0.5)).toBe(0);
    expect(clearance(12.5)).toBeCloseTo(0.5, 2);
    const wreath = motifOf("wreath", ring(15, 10));
    const within = tileOf([wreath, dot], [at(30, 30), at(30, 30, { motif: 1 })], straight(60, 60));
    expect(within.figures.clearance).toBeCloseTo(4, 2);
  });

  it("takes a motif seated on a mirror line for one with its image there, but not one beside it", () => {
    const mirrored: Arrangement = {
      ...straight(60, 60),
      unit: { width: 30_000, height: 60_000 },
      operations: [
        [1, 0, 0, 1, 0, 0],
        [-1, 0, 0, 1, 60_000, 0],
      ],
    };
    expect(tileOf([dot], [at(30, 20)], mirrored).figures.clearance).toBeCloseTo(48, 2);
    expect(tileOf([dot], [at(29.5, 20)], mirrored).figures.clearance).toBe(0);
    expect(tileOf([dot], [at(20, 20)], mirrored).figures.clearance).toBeCloseTo(8, 2);
    expect(tileOf([dot], [at(30, 20)], mirrored).figures.inkCoverage).toBeCloseTo((Math.PI * 36) / 3600, 2);
  });

  // Outside judge: jsts (EDL-1.0 or EPL-1.0), a port of the JTS Topology Suite.
  it.each(Object.entries(repeats))("is what jsts finds in a %s repeat, wherever motifs lie", (_, repeat) => {
    const motifs = [leaf(), blossom(), crescent(), sprig()].map((path, i) => motifOf(`m${i}`, path));
    const arrangement = repeat(120, 110);
    const place = fc.record({
      motif: fc.nat(3),
      x: fc.integer({ min: 0, max: 119_999 }),
      y: fc.integer({ min: 0, max: 109_999 }),
      turn: fc.nat(719).map((k) => k / 720),
      scale: fc.integer({ min: 10, max: 40 }).map((k) => k / 100),
      flip: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 4 }), (given) => {
        const places = given.map((p, i) => ({ ...p, id: String(i) }));
        const { clearance } = tileOf(motifs, places, arrangement).figures;
        const judged = smallestClearance(
          places,
          motifs.map((m) => m.outline),
          arrangement,
          150,
        );
        expect(Math.abs(clearance - judged.distance)).toBeLessThan(0.004);
      }),
      { numRuns: 12, seed: 7 },
    );
  });
});
