/** The toss against plain dart throwing, in one run: npm run bench -- packing [seeds] */
import { areaOf } from "../../src/geometry/path.ts";
import type { Placement } from "../../src/layout/layout.ts";
import { bodiesOf } from "../../src/layout/toss/body.ts";
import { type Effort, EVENLY, TIGHTLY } from "../../src/layout/toss/effort.ts";
import { filledStage } from "../../src/layout/toss/filled.ts";
import { type Job, jobFor } from "../../src/layout/toss/job.ts";
import { type Density, packTossed } from "../../src/layout/toss/pack.ts";
import type { Band } from "../../src/layout/toss/plan.ts";
import type { Stage } from "../../src/layout/toss/stage.ts";
import { createRandom } from "../../src/seed/random.ts";
import { measure } from "../../src/tile/figures/measure.ts";
import type { Figures } from "../../src/tile/tile.ts";
import { disc, entriesOf, mix, options, repeats, tools } from "../layout/toss/fixtures.ts";
import { darts, dartsOfList, type Stuck } from "./baseline.ts";

const SIDE = 200;
const GAP = 2;
const SCALES = [1, 22 / 36, 12 / 36];
const seeds = Array.from({ length: Number(process.argv[2] ?? 5) }, (_, k) => `bench-${k}`);
const entries = mix();
const motifs = entries.map((entry) => entry.drawings[0]!.motif);
const paths = motifs.map(({ outline }) => outline);
const arrangement = repeats.straight(SIDE, SIDE);

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

/** Processor time in ms: unlike the clock's, it does not count what else the machine is doing. */
function cpu(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** A toss of three fixed sizes, filled from large to small, kinds in equal shares within each size. */
function jobOf(seed: string): Job {
  const given = options({ entries: mix([1 / 3, 1]), gap: GAP });
  const bodies = bodiesOf(given.entries);
  const classes = SCALES.map((scale) =>
    bodies.map(
      (list, entry): Band => ({ entry, bodies: list, low: scale, high: scale, range: [scale, scale] }),
    ),
  );
  return jobFor(given, classes, tools(seed, arrangement));
}

const filled = (seed: string, effort: Effort): Promise<Stage> =>
  filledStage(jobOf(seed), { gap: GAP * 1000, stream: "fill", effort, done: 0 });

const stuckOf = (stage: Stage, turn: Float64Array): Stuck[] =>
  [...stage.board.pieces].map((piece) => ({
    motif: piece.body.entry,
    x: piece.x,
    y: piece.y,
    turn: turn[piece.turn]!,
    scale: piece.scale,
  }));

/** Both sides are measured by the same figures of a tile. */
function figuresOf(stuck: readonly Stuck[]): Figures {
  const placements = stuck.map((one, k): Placement => ({ ...one, id: `${k}`, flip: false }));
  return measure({ motifs, placements, arrangement, lattice: arrangement.lattice, layers: [] });
}

interface Row {
  readonly count: number;
  readonly coverage: number;
  readonly hole: number;
  readonly lumps: number;
  readonly ms: number;
}

async function rowsOf(name: string, run: (seed: string) => Stuck[] | Promise<Stuck[]>): Promise<Row> {
  const rows: Row[] = [];
  for (const seed of seeds) {
    const start = cpu();
    const stuck = await run(seed);
    const ms = cpu() - start;
    const { largestHole, lumpiness } = figuresOf(stuck);
    const area = stuck.reduce((sum, { motif, scale }) => sum + areaOf(paths[motif]!) * scale * scale, 0);
    rows.push({
      count: stuck.length,
      coverage: area / (SIDE * SIDE * 1e6),
      hole: largestHole.radius,
      lumps: lumpiness,
      ms,
    });
  }
  const row: Row = {
    count: median(rows.map(({ count }) => count)),
    coverage: median(rows.map(({ coverage }) => coverage)),
    hole: median(rows.map(({ hole }) => hole)),
    lumps: median(rows.map(({ lumps }) => lumps)),
    ms: median(rows.map(({ ms }) => ms)),
  };
  const cells = [
    `${row.count}`.padStart(4),
    row.coverage.toFixed(4),
    `${row.hole.toFixed(2)} mm`,
    row.lumps.toFixed(3),
    `${row.ms.toFixed(0)} ms`.padStart(8),
  ];
  console.log(`${name.padEnd(18)} ${cells.join("  ")}`);
  return row;
}

const ratio = (a: number, b: number): string => (a / b).toFixed(3);

console.log(`${"".padEnd(18)}    n  coverage  largest hole  lumpiness  processor time (medians)`);
const turn = jobOf("turns").turns.turn;
const base = await rowsOf("darts, jsts", (seed) =>
  darts(paths, SCALES, SIDE * 1000, GAP * 1000, 2000, createRandom(seed)),
);
for (let k = 0; k < 25; k++) await filled(`warming up ${k}`, EVENLY);
const even = await rowsOf("even", async (seed) => stuckOf(await filled(seed, EVENLY), turn));
const packed = await rowsOf("packed", async (seed) => stuckOf(await filled(seed, TIGHTLY), turn));
for (const [name, row] of Object.entries({ even, packed }))
  console.log(
    `${name}: ${ratio(row.coverage, base.coverage)}x coverage, ${ratio(row.ms, base.ms)}x time, ${ratio(row.hole, base.hole)}x largest hole`,
  );

console.log("\na fixed list of 60");
const listed = SCALES.flatMap((scale) => mix([scale, scale]));
const list = listed.flatMap(({ scale: [scale] }, k) =>
  Array.from({ length: 4 }, () => ({ motif: k % motifs.length, scale })),
);
const plain = await rowsOf("darts, jsts", (seed) =>
  dartsOfList(paths, list, SIDE * 1000, GAP * 1000, createRandom(seed)),
);
const spread = await rowsOf("count: 60", async (seed) => {
  const given = options({ entries: listed, gap: GAP, count: list.length });
  return [...(await packTossed(given, tools(seed, arrangement)))];
});
console.log(
  `count: ${ratio(spread.hole, plain.hole)}x largest hole, ${ratio(spread.lumps, plain.lumps)}x lumpiness`,
);

console.log("\nequal discs, gap 0 (random sequential adsorption 0.547, random close packing about 0.84)");
for (const density of ["even", "packed"] as const) {
  const shares: number[] = [];
  for (const seed of seeds) {
    const given = options({ density, gap: 0, entries: entriesOf(disc(4)) });
    const placed = await packTossed(given, tools(seed, arrangement));
    shares.push((placed.length * areaOf(disc(4))) / (SIDE * SIDE * 1e6));
  }
  console.log(`${density.padEnd(18)} ${median(shares).toFixed(4)}`);
}

console.log("\nmany motifs, even (wall clock)");
const clock = async (side: number, density: Density): Promise<{ count: number; ms: number }> => {
  const start = performance.now();
  const given = options({ density, entries: mix([1 / 3, 1]) });
  const placed = await packTossed(given, tools("many", repeats.straight(side, side)));
  return { count: placed.length, ms: performance.now() - start };
};
const some = [];
for (const side of [655, 655, 1465, 2065]) {
  const { count, ms } = await clock(side, "even");
  some.push({ count, ms });
  console.log(`${side} mm square`.padEnd(18), `${count}`.padStart(5), `${(ms / 1000).toFixed(2)} s`);
}
const [, thousand, five] = some;
console.log(`${ratio(five!.count, thousand!.count)}x motifs in ${ratio(five!.ms, thousand!.ms)}x time`);
