import { describe, expect, test } from "vitest";
import { imagesOf } from "../../../src/geometry/images.ts";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { planeGroup, type RepeatUse } from "../../../src/index.ts";
import type { Placement } from "../../../src/layout/layout.ts";
import { bodiesOf } from "../../../src/layout/toss/body.ts";
import { LIGHTLY } from "../../../src/layout/toss/effort.ts";
import { filledStage } from "../../../src/layout/toss/filled.ts";
import { type Job, jobFor } from "../../../src/layout/toss/job.ts";
import { planClasses } from "../../../src/layout/toss/plan.ts";
import { pressIn } from "../../../src/layout/toss/press.ts";
import { crowdOf, inOrder, settle } from "../../../src/layout/toss/settle.ts";
import type { Stage } from "../../../src/layout/toss/stage.ts";
import { definitionOf } from "../../../src/params/use.ts";
import type { RepeatPiece } from "../../../src/repeat/repeat.ts";
import { smallestClearance } from "./clearance.ts";
import { mix, options, repeats, tools } from "./fixtures.ts";

const arranged = (repeat: RepeatUse): Arrangement =>
  definitionOf<RepeatPiece>(repeat, "test").arrange(repeat.params as never);
const entries = mix([0.3, 0.3]);
const outlines = entries.map(({ drawings }) => drawings[0]!.motif.outline);
const breathe = (): Promise<void> => Promise.resolve();
const given = { entries, gap: 1.5, spread: 0.5 } as const;

const jobOf = (arrangement: Arrangement, flip = false): Job =>
  jobFor(options({ ...given, flip }), planClasses(entries, bodiesOf(entries)), tools("press", arrangement));
const filled = (job: Job): Promise<Stage> =>
  filledStage(job, { gap: 1500, stream: "fill", effort: LIGHTLY, done: 0 });
const placementsOf = (stage: Stage, job: Job): Placement[] =>
  inOrder(stage).map(({ serial, body, x, y, turn, scale, flip }) => ({
    id: `${serial}`,
    motif: body.drawn.index,
    x,
    y,
    turn: job.turns.turn[turn]!,
    scale,
    flip,
  }));
const clearance = (stage: Stage, job: Job): number =>
  smallestClearance(placementsOf(stage, job), outlines, job.arrangement, 3).distance;

const kinds: readonly (readonly [string, Arrangement])[] = [
  ["a straight repeat", repeats.straight(44, 40)],
  ["mirrors", repeats.mirror(44, 40)],
  ["p2", arranged(planeGroup({ group: "p2", width: 60, height: 60, lean: 20 }))],
  ["p4", arranged(planeGroup({ group: "p4", width: 90 }))],
  ["pg", arranged(planeGroup({ group: "pg", width: 60, height: 60 }))],
];

describe.each(kinds)("under %s", (_, arrangement) => {
  test("more go in than found a free place, and no pair comes under the gap", async () => {
    const job = jobOf(arrangement, true);
    const stage = await filled(job);
    const before = stage.board.pieces.size;
    const pressing = { freeing: {}, sweeps: 120, patience: 3, batch: 0.5, more: 0, rest: 0 };
    const most = 6;
    await pressIn(stage, job, job.classes[0]!, most, pressing, job.random.fork("p"), () => most, breathe);
    const came = stage.board.pieces.size - before;
    expect(came).toBeGreaterThan(0);
    expect(came).toBeLessThanOrEqual(most);
    expect(stage.used.reduce((a, b) => a + b, 0)).toBe(before + came);
    expect(clearance(stage, job)).toBeGreaterThanOrEqual(1.5 - 1e-6);
    const { home } = imagesOf(arrangement);
    for (const { x, y } of placementsOf(stage, job)) expect(home(x, y)).toEqual([0, 0]);
  });

  test("a crowd that was pushed into itself is not put down, and nothing changes", async () => {
    const job = jobOf(arrangement);
    const stage = await filled(job);
    const before = placementsOf(stage, job);
    const field = stage.field.values.slice();
    const crowd = crowdOf(job, inOrder(stage), []);
    for (const i of crowd.x.keys()) {
      crowd.x[i] = crowd.x[0]! + 200 * i;
      crowd.y[i] = crowd.y[0]!;
    }
    expect(settle(stage, job, crowd, inOrder(stage))).toBe(false);
    expect(placementsOf(stage, job)).toEqual(before);
    expect(stage.field.values).toEqual(field);
  });

  test("a crowd that is a hair too near is put right", async () => {
    const job = jobOf(arrangement);
    const stage = await filled(job);
    const crowd = crowdOf(job, inOrder(stage), []);
    for (const [i, r] of crowd.radius.entries()) {
      crowd.x[i]! += (i % 2 === 0 ? 1 : -1) * 0.0015 * r;
      crowd.turn[i]! += 0.0006;
    }
    crowd.moved.fill(1);
    const done = settle(stage, job, crowd, inOrder(stage));
    expect(done).toBe(true);
    expect(clearance(stage, job)).toBeGreaterThanOrEqual(1.5 - 1e-6);
  });
});

// Against a mirror none can be pushed over.
const open = kinds.filter(([name]) => name !== "mirrors");

test.each(open)(
  "under %s, a motif pushed over the edge of the unit comes back into it as one of its own copies",
  async (_, arrangement) => {
    const job = jobOf(arrangement, true);
    const stage = await filledStage(job, {
      gap: 1500,
      stream: "one",
      effort: LIGHTLY,
      entries: [1, 0, 0, 0, 0],
      done: 0,
    });
    const { home, operations } = imagesOf(arrangement);
    let [went, over] = [0, 0];
    for (let k = 0; k < 24; k++) {
      const pieces = inOrder(stage);
      const crowd = crowdOf(job, pieces, []);
      crowd.x[0]! += 7300;
      crowd.y[0]! += 5100;
      crowd.moved[0] = 1;
      if (!home(pieces[0]!.x + 7300, pieces[0]!.y + 5100)) over++;
      if (settle(stage, job, crowd, pieces)) went++;
      const [only] = placementsOf(stage, job);
      expect(home(only!.x, only!.y)).toEqual([0, 0]);
      expect(clearance(stage, job)).toBeGreaterThanOrEqual(1.5 - 1e-6);
    }
    expect(went).toBeGreaterThan(12);
    if (operations.length > 1) expect(over).toBeGreaterThan(0);
  },
);
