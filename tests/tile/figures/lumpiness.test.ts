import { describe, expect, it } from "vitest";
import { createRandom } from "../../../src/seed/random.ts";
import { disc } from "../../layout/toss/fixtures.ts";
import { at, motifOf, squares, straight, tileOf } from "./given.ts";

const dot = [motifOf("dot", disc(1))];
const lumpinessOf = (places: ReturnType<typeof at>[], side = 100): number =>
  tileOf(dot, places, straight(side, side)).figures.lumpiness;

/** Each disc anywhere, whatever the others do. */
function strewn(seed: string, count = 60): ReturnType<typeof at>[] {
  const random = createRandom(seed);
  return Array.from({ length: count }, (_, i) =>
    at(random.next() * 100, random.next() * 100, { id: String(i) }),
  );
}

describe("lumpiness", () => {
  it("is 0 in a lattice, which has no long waves", () => {
    const { arrangement, places } = squares(10, 10);
    expect(tileOf(dot, places, arrangement).figures.lumpiness).toBeLessThan(1e-3);
  });

  it("is 1 on average when discs are strewn by chance: the structure factor of a Poisson process", () => {
    const seeds = Array.from({ length: 40 }, (_, i) => lumpinessOf(strewn(`strewn-${i}`)));
    const mean = seeds.reduce((sum, value) => sum + value, 0) / seeds.length;
    expect(mean).toBeGreaterThan(0.88);
    expect(mean).toBeLessThan(1.12);
  });

  it("rises when half of a lattice is thinned, and more when discs lie in clouds", () => {
    const random = createRandom("thin");
    const { places } = squares(10, 10);
    const thinned = places.filter(({ x }) => x >= 50_000 || random.next() > 0.35);
    const clouds = places.map((place) => ({
      ...place,
      x: Math.round(place.x / 2),
      y: Math.round(place.y / 2),
    }));
    expect(lumpinessOf(thinned)).toBeGreaterThan(0.15);
    expect(lumpinessOf(clouds)).toBeGreaterThan(3);
  });

  it("is the same wherever the block is cut from the pattern", () => {
    const places = strewn("cut");
    const moved = places.map((place) => ({ ...place, x: place.x + 37_123, y: place.y - 21_456 }));
    expect(lumpinessOf(moved)).toBeCloseTo(lumpinessOf(places), 3);
  });
});
