import { describe, expect, it } from "vitest";
import { createRandom } from "../../../src/seed/random.ts";
import { kindsOf } from "../../../src/tile/figures/neighbours.ts";
import { disc } from "../../layout/toss/fixtures.ts";
import { at, motifOf, straight, tileOf } from "./given.ts";

const kinds = ["dot", "ring"].map((name) => motifOf(name, disc(2)));

/** 20 x 20 places, a little closer across than down, their kinds as told. */
const dealt = (motif: (x: number, y: number) => number) =>
  tileOf(
    kinds,
    Array.from({ length: 400 }, (_, i) =>
      at((i % 20) * 9, Math.floor(i / 20) * 10, { motif: motif(i % 20, Math.floor(i / 20)), id: `${i}` }),
    ),
    straight(180, 200),
  ).figures.neighbours;

describe("like neighbours", () => {
  it("are none in a chequered ground and all in two halves but for the borders", () => {
    expect(dealt((x) => x % 2).alike).toBe(0);
    expect(dealt((_, y) => (y < 10 ? 0 : 1)).alike).toBe(1);
  });

  it("are to be expected as often as Σ n(n - 1) / N(N - 1), and are when kinds are dealt by chance", () => {
    const random = createRandom("labels");
    const { alike, expected } = dealt(() => (random.next() < 0.3 ? 0 : 1));
    expect(expected).toBeCloseTo(0.58, 1);
    expect(Math.abs(alike - expected)).toBeLessThan(0.1);
    expect(dealt((x) => x % 2).expected).toBeCloseTo((2 * 200 * 199) / (400 * 399), 4);
  });

  it("are of one kind when they are variants of one motif, and not for a like name alone", () => {
    const named = ["leaf-1", "leaf-2", "leaf-3", "star", "leaf-1", "leaf-2", "dot-2", "star"];
    expect(kindsOf(named.map((name) => motifOf(name, disc(1))))).toEqual([0, 0, 0, 3, 4, 4, 6, 7]);
  });
});
