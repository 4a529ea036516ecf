import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createRandom } from "../../../src/seed/random.ts";
import { exponential } from "../../../src/tile/figures/exponential.ts";
import { rayleigh } from "../../../src/tile/figures/facing.ts";
import { symmetryOrder } from "../../../src/tile/figures/symmetry-order.ts";
import { rectangle } from "../../given.ts";
import { blossom, crescent, disc, leaf, ring, sprig, star } from "../../layout/toss/fixtures.ts";
import { at, motifOf, straight, tileOf } from "./given.ts";

it("the exponential is that of the engine, to fourteen digits", () => {
  fc.assert(
    fc.property(fc.double({ min: -690, max: 690, noNaN: true }), (x) => {
      expect(Math.abs(exponential(x) / Math.exp(x) - 1)).toBeLessThan(1e-14 * (1 + Math.abs(x)));
    }),
    { numRuns: 500, seed: 1 },
  );
  expect([exponential(0), exponential(-800), exponential(800)]).toEqual([1, 0, Infinity]);
});

describe("Rayleigh's test", () => {
  // Critical values of z = R²/n at the 5 % level, from memory of Zar, Biostatistical Analysis, table B.34.
  it.each([
    [10, 2.919],
    [20, 2.958],
    [50, 2.982],
    [100, 2.988],
  ])("of %i angles has p = 0.05 at z = %f", (n, z) => {
    expect(rayleigh(n, Math.sqrt(z / n))).toBeCloseTo(0.05, 3);
  });

  it("is uniform over angles drawn by chance: 5 % below 0.05", () => {
    const random = createRandom("rayleigh");
    let below = 0;
    for (let k = 0; k < 4000; k++) {
      let [x, y] = [0, 0];
      for (let i = 0; i < 12; i++) {
        const turn = 2 * Math.PI * random.next();
        x += Math.cos(turn);
        y += Math.sin(turn);
      }
      if (rayleigh(12, Math.hypot(x, y) / 12) < 0.05) below++;
    }
    expect(below / 4000).toBeGreaterThan(0.04);
    expect(below / 4000).toBeLessThan(0.06);
  });
});

describe("the order of symmetry", () => {
  it.each([
    ["a disc", disc(9), 0],
    ["a ring", ring(9, 4), 0],
    ["a square", rectangle(-5, -5, 10, 10), 4],
    ["a bar", rectangle(3, 8, 12, 4), 2],
    ["a spindle", leaf(), 2],
    ["a flower of five petals", blossom(), 5],
    ["a star of five rays", star(), 5],
    ["a moon", crescent(), 1],
    ["a twig", sprig(), 1],
  ])("of %s", (_, path, order) => {
    expect(symmetryOrder(path)).toBe(order);
  });
});

describe("facing", () => {
  const motifs = [crescent(), leaf(), blossom(), disc(8)].map((path, i) => motifOf(`m${i}`, path));
  const facing = (turnOf: (i: number) => number, motifOfPlace = (i: number) => i % 4) => {
    const places = Array.from({ length: 40 }, (_, i) =>
      at((i % 8) * 50, Math.floor(i / 8) * 50, { motif: motifOfPlace(i), turn: turnOf(i), id: `${i}` }),
    );
    return tileOf(motifs, places, straight(400, 250)).figures.facing;
  };
  const random = createRandom("facing");

  it("is 1 and no accident when all face one way, whatever their order of symmetry", () => {
    const { alike, chance } = facing(() => 0.37);
    expect(alike).toBeCloseTo(1, 3);
    expect(chance).toBeLessThan(1e-3);
  });

  it("is low and likely when each is turned by chance, and does not see how discs are turned", () => {
    expect(facing(() => random.next()).chance).toBeGreaterThan(0.01);
    expect(
      facing(
        () => 0.2,
        () => 3,
      ),
    ).toEqual({ alike: 0, chance: 1 });
  });

  it("sees half turns of a spindle and fifths of a flower for what they are: no turn at all", () => {
    expect(
      facing(
        (i) => (i % 2) / 2,
        () => 1,
      ).alike,
    ).toBeCloseTo(1, 3);
    expect(
      facing(
        (i) => (i % 5) / 5,
        () => 2,
      ).alike,
    ).toBeCloseTo(1, 3);
    expect(
      facing(
        (i) => (i % 2) / 2,
        () => 0,
      ).alike,
    ).toBeCloseTo(0, 3);
  });
});
