// Colorways planned out of all assignments of 8 inks to 5 roles, against random restarts of the same choice, and a large plan.
// Run with: npm run bench -- colorways
import { colorwayDistance, farthestFirst, leastDistance } from "../../src/colorway/plan/apart.ts";
import { goodCandidates } from "../../src/colorway/plan/candidates.ts";
import { choose } from "../../src/colorway/plan/choose.ts";
import { colorways } from "../../src/colorway/plan/colorways.ts";
import { inkTable } from "../../src/colorway/plan/ink-table.ts";
import { sightOf } from "../../src/colorway/plan/sight.ts";
import { createRandom } from "../../src/seed/random.ts";
import { measureRoles } from "../../src/tile/figures/role-figures.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { cluster, manyInks, quay } from "../colorway/plan/given.ts";

const ROUNDS = 15;
const RESTARTS = 200;

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

function timed(rounds: number, work: () => unknown): { first: number; middle: number } {
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return { first: times[0]!, middle: median(times) };
}

const ms = (value: number): string => `${value.toFixed(1)} ms`;

const tile = cluster(5);
const once = timed(1, () => measureRoles(tile)).first;
console.log(`a tile of 5 roles is measured in ${ms(once)}, once`);
const count = 20;
const plan = timed(ROUNDS, () => colorways(tile, { palettes: [quay], count, minContrast: 1 }));
console.log(
  `20 colorways out of 6720: ${ms(plan.middle)} (median of ${ROUNDS}; the first ${ms(plan.first)})`,
);

const sight = sightOf(measureRoles(tile), tile.recipe.roles);
const table = inkTable(Object.values(quay.inks));
const options = { palettes: [quay], count, hold: new Map(), keep: "free", minContrast: 1 } as const;
const candidates = goodCandidates(options, sight, table, []);
const distance = colorwayDistance(sight, table, candidates);
const ours = leastDistance(choose(candidates.length, count, distance), distance);
const random = createRandom("restarts");
let best = 0;
for (let k = 0; k < RESTARTS; k++) {
  const start = random.below(candidates.length);
  best = Math.max(best, leastDistance(farthestFirst(candidates.length, count, [start], distance), distance));
}
console.log(
  `smallest mutual distance ${ours.toFixed(3)}, best of ${RESTARTS} random restarts ${best.toFixed(3)}: ${(ours / best).toFixed(3)}x`,
);

const large: Tile = cluster(12);
measureRoles(large);
const many = timed(3, () => colorways(large, { palettes: [manyInks(50)], count: 20 }));
console.log(`20 colorways of 50 inks and 12 roles, searched: ${ms(many.middle)}`);
