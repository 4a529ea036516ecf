/** Coverage and processor time of the toss against a plain dart thrower, in one run: npm run bench -- packing */
import { areaOf } from "../../src/geometry/path.ts";
import { bodiesOf } from "../../src/layout/toss/body.ts";
import { ease } from "../../src/layout/toss/ease.ts";
import { filledStage, jobFor } from "../../src/layout/toss/job.ts";
import type { Band } from "../../src/layout/toss/plan.ts";
import { rework } from "../../src/layout/toss/rework.ts";
import { createRandom } from "../../src/seed/random.ts";
import { mix, options, repeats, tools } from "../layout/toss/fixtures.ts";
import { darts } from "./baseline.ts";

const SIDE = 200;
const SCALES = [1, 22 / 36, 12 / 36];
const seeds = Array.from({ length: Number(process.argv[2] ?? 3) }, (_, k) => `bench-${k}`);
const paths = mix().map((entry) => entry.drawings[0]!.motif.outline);

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

async function toss(seed: string, packed = false): Promise<{ count: number; coverage: number }> {
  const given = options({ density: "even", entries: mix([1 / 3, 1]) });
  const arrangement = repeats.straight(SIDE, SIDE);
  const bodies = bodiesOf(given.entries);
  const classes = SCALES.map((scale) =>
    bodies.map((list, entry): Band => ({ entry, bodies: list, low: scale, high: scale })),
  );
  const job = jobFor(given, classes, tools(seed, arrangement));
  const stage = await filledStage(job, { gap: given.gap * 1000, stream: "fill", done: 0 });
  if (packed) await rework(stage, job, 0);
  else await ease(stage, job, 0, 1);
  const pieces = [...stage.board.pieces];
  const area = pieces.reduce((sum, p) => sum + areaOf(p.body.drawn.motif.outline) * p.scale * p.scale, 0);
  return { count: pieces.length, coverage: area / (SIDE * SIDE * 1e6) };
}

/** Processor time in ms: unlike the clock's, it does not count what else the machine is doing. */
function cpu(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

async function measure(
  name: string,
  run: (seed: string) => Promise<{ count: number; coverage: number }>,
): Promise<{ coverage: number; ms: number }> {
  const rows: { count: number; coverage: number; ms: number }[] = [];
  for (const seed of seeds) {
    const start = cpu();
    const result = await run(seed);
    rows.push({ ...result, ms: cpu() - start });
  }
  const coverage = median(rows.map((row) => row.coverage));
  const ms = median(rows.map((row) => row.ms));
  console.log(
    `${name.padEnd(14)} n ${median(rows.map((row) => row.count))}  coverage ${coverage.toFixed(4)}  ${ms.toFixed(0)} ms`,
  );
  return { coverage, ms };
}

const base = await measure("darts", (seed) =>
  Promise.resolve(darts(paths, SCALES, SIDE * 1000, 2000, 2000, createRandom(seed))),
);
await measure("(warming up)", toss);
const even = await measure("even", toss);
const packed = await measure("packed", (seed) => toss(seed, true));
console.log(
  `even: ${(even.coverage / base.coverage).toFixed(3)}x coverage, ${(even.ms / base.ms).toFixed(3)}x time`,
);
console.log(
  `packed: ${(packed.coverage / base.coverage).toFixed(3)}x coverage, ${(packed.ms / base.ms).toFixed(3)}x time`,
);
