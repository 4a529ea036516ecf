// The statistical weights of plane groups and their systematic absences: International Tables for Crystallography A and B
// (values from memory).
import { describe, expect, it } from "vitest";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { planeGroup } from "../../../src/repeat/plane-group.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { lumpiness } from "../../../src/tile/figures/lumpiness.ts";
import { waveChance } from "../../../src/tile/figures/wave-chance.ts";
import { disc } from "../../layout/toss/fixtures.ts";
import { at, motifOf, sceneFor } from "./given.ts";

type Group = "p1" | "p2" | "pm" | "pg" | "p2mm" | "p2gg" | "p4" | "p4mm" | "p3" | "p6mm";

const arranged = (group: Group): Arrangement => {
  const height = /p[346]/.test(group) ? {} : { height: 80 };
  const { piece } = planeGroup;
  const { params } = planeGroup({ group, width: 100, ...height } as never);
  return piece.arrange(params as never) as Arrangement;
};

/** The weight of the wave that closes h times along the first and k times along the second vector of the lattice. */
function weight(group: Group, h: number, k: number): number {
  const { lattice, operations } = arranged(group);
  const { a, b } = lattice;
  const det = a[0] * b[1] - a[1] * b[0];
  return waveChance(operations, (h * b[1] - k * a[1]) / det, (k * a[0] - h * b[0]) / det);
}

describe("the weight of a wave", () => {
  it.each([
    ["p1", 3, 1, 1],
    ["p2", 3, 1, 1],
    ["p2mm", 3, 1, 1],
    ["p2mm", 3, 0, 2],
    ["p2mm", 0, 2, 2],
    ["p4", 3, 0, 1],
    ["p4mm", 3, 1, 1],
    ["p4mm", 3, 0, 2],
    ["p4mm", 2, 2, 2],
    ["p3", 2, 1, 1],
  ] as const)("of %s at %i, %i is %i", (group, h, k, expected) => {
    expect(weight(group, h, k)).toBeCloseTo(expected, 4);
  });

  it("is 0 where glides forbid a wave, and double between", () => {
    for (const h of [1, 3, 5]) {
      expect(weight("p2gg", h, 0)).toBeCloseTo(0, 4);
      expect(weight("p2gg", 0, h)).toBeCloseTo(0, 4);
      expect(weight("p2gg", h + 1, 0)).toBeCloseTo(2, 4);
      expect(weight("p2gg", h, 2)).toBeCloseTo(1, 4);
    }
  });
});

it.each(["p2mm", "p2gg", "p4mm", "p6mm"] as const)(
  "lumpiness is 1 on average when discs are strewn by chance under %s",
  (group) => {
    const arrangement = arranged(group);
    const { width, height } = arrangement.lattice.block;
    const dot = [motifOf("dot", disc(0.5))];
    const random = createRandom(`strewn ${group}`);
    let sum = 0;
    const rounds = 40;
    for (let k = 0; k < rounds; k++) {
      const places = Array.from({ length: 24 }, (_, i) =>
        at((random.next() * width) / 1000, (random.next() * height) / 1000, { id: `${i}` }),
      );
      sum += lumpiness(sceneFor(dot, places, arrangement));
    }
    expect(sum / rounds).toBeGreaterThan(0.85);
    expect(sum / rounds).toBeLessThan(1.15);
  },
);
