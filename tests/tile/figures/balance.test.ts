import fc from "fast-check";
import polygonClipping from "polygon-clipping";
import { describe, expect, it } from "vitest";
import { flatten } from "../../../src/geometry/flatten.ts";
import type { Lattice } from "../../../src/geometry/lattice.ts";
import { placing, transformPath } from "../../../src/geometry/matrix.ts";
import { areaOf, joinPaths } from "../../../src/geometry/path.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { variationByChance, variationOf } from "../../../src/tile/figures/balance.ts";
import { blossom, disc } from "../../layout/toss/fixtures.ts";
import { at, motifOf, straight, tileOf } from "./given.ts";

const square: Lattice = { a: [90_000, 0], b: [0, 90_000], block: { width: 90_000, height: 90_000 } };
const moved = (path: ReturnType<typeof disc>, x: number, y: number) =>
  transformPath(path, placing(x * 1000, y * 1000));

describe("the variation of ink", () => {
  it("is 0 when every ninth has the same, and √8 when one has all", () => {
    const all = Array.from({ length: 9 }, (_, i) =>
      moved(disc(5), 15 + (i % 3) * 30, 15 + Math.floor(i / 3) * 30),
    );
    expect(variationOf(joinPaths(all), square)).toBeCloseTo(0, 9);
    expect(variationOf(all[4]!, square)).toBeCloseTo(Math.sqrt(8), 9);
    expect(variationOf(joinPaths([all[0]!, all[3]!, all[6]!]), square)).toBeCloseTo(Math.SQRT2, 9);
  });

  it("cuts what crosses a border as polygon-clipping does, in a leaning lattice too", () => {
    const leaning: Lattice = {
      a: [90_000, 30_000],
      b: [0, 60_000],
      block: { width: 180_000, height: 60_000 },
    };
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 60 }), (x, y) => {
        const path = moved(blossom(), x, y);
        const ring = flatten(path, 20)[0]!;
        const points = Array.from({ length: ring.length / 2 }, (_, i): [number, number] => [
          ring[2 * i]!,
          ring[2 * i + 1]!,
        ]);
        const sums = Array.from({ length: 9 }, () => 0);
        for (let i = -3; i < 9; i++)
          for (let j = -6; j < 9; j++) {
            const corner = (u: number, v: number): [number, number] => [u * 30_000, u * 10_000 + v * 20_000];
            const part = [corner(i, j), corner(i + 1, j), corner(i + 1, j + 1), corner(i, j + 1)];
            for (const piece of polygonClipping.intersection([points], [part])) {
              const [shell] = piece as [number, number][][];
              let area = 0;
              shell!.forEach(([px, py], k) => {
                const [qx, qy] = shell![(k + 1) % shell!.length]!;
                area += (px * qy - qx * py) / 2;
              });
              sums[((i + 3) % 3) + 3 * ((j + 6) % 3)]! += Math.abs(area);
            }
          }
        const mean = sums.reduce((a, b) => a + b, 0) / 9;
        const judged = Math.sqrt(sums.reduce((a, b) => a + (b - mean) ** 2, 0) / 9) / mean;
        expect(variationOf(path, leaning)).toBeCloseTo(judged, 3);
        expect(mean * 9).toBeCloseTo(areaOf(path), -7);
      }),
      { numRuns: 30, seed: 2 },
    );
  });

  it("by chance is √(8 Σ a²) / Σ a: so it comes out when pieces fall blindly", () => {
    const random = createRandom("balance");
    const areas = [1, 1, 2, 3, 5, 8];
    let squares = 0;
    for (let k = 0; k < 4000; k++) {
      const parts = Array.from({ length: 9 }, () => 0);
      for (const area of areas) parts[random.below(9)]! += area;
      const mean = 20 / 9;
      squares += parts.reduce((sum, ink) => sum + (ink - mean) ** 2, 0) / 9 / (mean * mean);
    }
    expect(Math.sqrt(squares / 4000) / variationByChance(areas)).toBeCloseTo(1, 1);
    expect(variationByChance([])).toBe(0);
  });
});

it("balance tells the role that lies to one side from the one that does not", () => {
  const motifs = [motifOf("plum", disc(3), "plum"), motifOf("sage", disc(3), "sage")];
  const places = Array.from({ length: 36 }, (_, i) => {
    const [x, y] = [i % 6, Math.floor(i / 6)];
    return [
      at(x * 5, y * 15, { id: `p${i}`, motif: 0 }),
      at(x * 15 + 7, y * 15 + 7, { id: `s${i}`, motif: 1 }),
    ];
  }).flat();
  const { plum, sage } = tileOf(motifs, places, straight(90, 90)).figures.balance;
  expect(plum!.variation / plum!.chance).toBeGreaterThan(2);
  expect(sage!.variation / sage!.chance).toBeLessThan(0.5);
  expect(plum!.chance).toBeCloseTo(Math.sqrt(8 / 36), 3);
});
