import { describe, expect, it } from "vitest";
import { createRandom } from "../../../src/seed/random.ts";
import { rectangle } from "../../given.ts";
import { disc } from "../../layout/toss/fixtures.ts";
import { at, motifOf, squares, straight, tileOf } from "./given.ts";

const dot = [motifOf("dot", disc(3))];

describe("gutter", () => {
  it("is 0 along a clear lane wider than the band, and names its direction", () => {
    const { arrangement, places } = squares(10, 10);
    const shifted = places.map((place, i) => ({ ...place, x: place.x + (i % 3) * 3000 }));
    const row = tileOf(
      dot,
      shifted.filter(({ y }) => y !== 50_000),
      arrangement,
    ).figures;
    expect(row.gutter).toEqual({ value: 0, along: [100, 0] });
    const column = tileOf(
      dot,
      places.filter(({ x }) => x !== 50_000),
      arrangement,
    ).figures;
    expect(column.gutter).toEqual({ value: 0, along: [0, 100] });
    const diagonal = tileOf(
      dot,
      places.filter(({ x, y }) => x !== y),
      arrangement,
    ).figures.gutter;
    expect(diagonal.value).toBe(0);
    expect(diagonal.along[0] / diagonal.along[1]).toBe(1);
  });

  it("is the ink of the emptiest band over the mean: known for bars of ink", () => {
    // Bars 60 mm high in every 100 mm; the band is half of a spacing: √(100 · 100) / 2 = 50 mm. 40 of it are bare.
    const bar = [motifOf("bar", rectangle(0, 0, 25, 60))];
    const bars = [0, 25, 50, 75].map((x) => at(x, 20));
    const { spacing, gutter } = tileOf(bar, bars, straight(100, 100)).figures;
    expect(spacing).toBe(50);
    // Half of 50 is 25 mm: bare altogether.
    expect(gutter.value).toBe(0);
    const low = tileOf([motifOf("bar", rectangle(0, 0, 25, 90))], bars, straight(100, 100)).figures;
    expect(low.gutter.value).toBeCloseTo(15 / 25 / 0.9, 1);
  });
});

describe("tracking", () => {
  const of = (places: ReturnType<typeof at>[]): number =>
    tileOf(dot, places, straight(200, 200)).figures.tracking.value;

  it("is low where discs lie evenly, about 1 or more by chance, and high in rows", () => {
    const random = createRandom("tracking");
    // A Fibonacci lattice: 89 points as even as can be, in rows in no short direction.
    const even = Array.from({ length: 89 }, (_, i) =>
      at((i * 200) / 89, (((i * 55) % 89) * 200) / 89, { id: `${i}` }),
    );
    const strewn = even.map((_, i) => at(random.next() * 200, random.next() * 200, { id: `${i}` }));
    const rows = even.map((p) => ({ ...p, y: Math.round(p.y / 40_000) * 40_000 }));
    expect(of(even)).toBeLessThan(0.5);
    expect(of(strewn)).toBeGreaterThan(0.8);
    expect(of(rows)).toBeGreaterThan(1.3);
  });
});
