import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { colorwayDistance, farthestFirst, leastDistance } from "../../../src/colorway/plan/apart.ts";
import { goodCandidates } from "../../../src/colorway/plan/candidates.ts";
import { choose } from "../../../src/colorway/plan/choose.ts";
import { inkTable } from "../../../src/colorway/plan/ink-table.ts";
import { sightOf } from "../../../src/colorway/plan/sight.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { measureRoles } from "../../../src/tile/figures/role-figures.ts";
import { cluster, quay } from "./given.ts";

/** Points on a line and the distance of any two. */
const onLine = (points: readonly number[]) => (a: number, b: number) => Math.abs(points[a]! - points[b]!);

describe("farthest-first", () => {
  it("is at least half as far apart as the best choice there is (Gonzalez, 1985)", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: 999 }), { minLength: 4, maxLength: 9 }),
        (points) => {
          const distance = onLine(points);
          let best = 0;
          for (let mask = 0; mask < 1 << points.length; mask++) {
            const subset = points.map((_, i) => i).filter((i) => mask & (1 << i));
            if (subset.length === 3) best = Math.max(best, leastDistance(subset, distance));
          }
          for (let start = 0; start < points.length; start++) {
            const chosen = farthestFirst(points.length, 3, [start], distance);
            expect(leastDistance(chosen, distance)).toBeGreaterThanOrEqual(best / 2);
          }
        },
      ),
      { numRuns: 60, seed: 2 },
    );
  });

  it("takes each entry once, and all where all are wanted", () => {
    expect(farthestFirst(4, 9, [2], onLine([5, 5, 5, 5])).sort()).toEqual([0, 1, 2, 3]);
  });
});

describe("the choice", () => {
  it("of the first and two more is the best there is on a line, within what better entries may take", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: 9999 }), { minLength: 4, maxLength: 60 }),
        (points) => {
          const distance = onLine(points);
          const chosen = choose(points.length, 3, distance);
          const best = Math.max(
            ...points.flatMap((_, a) => points.map((_, b) => leastDistance([0, a, b], distance))),
          );
          expect(chosen).toContain(0);
          expect(leastDistance(chosen, distance)).toBeGreaterThanOrEqual(0.95 * best);
        },
      ),
      { numRuns: 60, seed: 4 },
    );
  });

  it("takes better entries where distance allows: entries 0, 1, 2 of equals", () => {
    expect(choose(30, 3, (a, b) => (a === b ? 0 : 7))).toEqual([0, 1, 2]);
    expect(choose(3, 5, onLine([1, 2, 3]))).toEqual([0, 1, 2]);
  });

  it("is as far apart as the best of 200 random restarts, nearly, in plans of 4 to 6 roles", () => {
    const random = createRandom("restarts");
    for (const [roles, count] of [
      [4, 12],
      [5, 20],
      [6, 9],
    ] as const) {
      const tile = cluster(roles);
      const sight = sightOf(measureRoles(tile), tile.recipe.roles);
      const table = inkTable(Object.values(quay.inks));
      const plan = { palettes: [quay], count, hold: new Map(), keep: "free", minContrast: 1 } as const;
      const candidates = goodCandidates(plan, sight, table, []);
      const total = candidates.length;
      const distance = colorwayDistance(sight, table, candidates);
      const ours = leastDistance(choose(total, count, distance), distance);
      let best = 0;
      for (let k = 0; k < 200; k++)
        best = Math.max(
          best,
          leastDistance(farthestFirst(total, count, [random.below(total)], distance), distance),
        );
      expect(ours / best, `${count} of ${roles} roles`).toBeGreaterThanOrEqual(0.95);
    }
  });
});
