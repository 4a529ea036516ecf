import { expect, test } from "vitest";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import type { Placement } from "../../../src/layout/layout.ts";
import { bodiesOf, SLACK } from "../../../src/layout/toss/body.ts";
import { LIGHTLY } from "../../../src/layout/toss/effort.ts";
import { filledStage } from "../../../src/layout/toss/filled.ts";
import { type Job, jobFor } from "../../../src/layout/toss/job.ts";
import { planClasses } from "../../../src/layout/toss/plan.ts";
import { createStage, type Stage } from "../../../src/layout/toss/stage.ts";
import { widen } from "../../../src/layout/toss/widen.ts";
import { smallestClearance } from "./clearance.ts";
import { mix, options, repeats, tools } from "./fixtures.ts";

const entries = mix([0.3, 0.3]);
const outlines = entries.map(({ drawings }) => drawings[0]!.motif.outline);
const breathe = (): Promise<void> => Promise.resolve();

const jobOf = (arrangement: Arrangement): Job =>
  jobFor(options({ entries }), planClasses(entries, bodiesOf(entries)), tools("widen", arrangement));

const placementsOf = (stage: Stage, job: Job): Placement[] =>
  [...stage.board.pieces].map(({ serial, body, x, y, turn, scale, flip }) => ({
    id: `${serial}`,
    motif: body.drawn.index,
    x,
    y,
    turn: job.turns.turn[turn]!,
    scale,
    flip,
  }));

test.each(["straight", "half-drop", "mirror"] as const)(
  "the gap that %s motifs are said to have come to, they keep, and it is wider than theirs was",
  async (name) => {
    const arrangement = repeats[name](80, 70);
    const job = jobOf(arrangement);
    const stage = await filledStage(job, {
      gap: 2000,
      stream: "fill",
      effort: LIGHTLY,
      entries: [3, 3, 3, 3, 3],
      done: 0,
    });
    const before = placementsOf(stage, job);
    expect(before).toHaveLength(15);
    const reached = await widen(stage, job, 2000, breathe);
    expect(reached).toBeGreaterThan(3500);
    const after = placementsOf(stage, job);
    const { distance } = smallestClearance(after, outlines, arrangement, 12);
    // Of flattened outlines it is exact: drawn ones may come nearer by what flattening takes.
    expect(distance * 1000).toBeGreaterThan(reached - SLACK);
    expect(after.map(({ motif }) => motif).sort()).toEqual(before.map(({ motif }) => motif).sort());
    for (const { x, y } of after) {
      expect(Number.isInteger(x) && Number.isInteger(y)).toBe(true);
      expect(x >= 0 && x < arrangement.unit.width && y >= 0 && y < arrangement.unit.height).toBe(true);
    }
    expect(stage.gap).toBe(2000 + SLACK);
  },
);

test("nothing is as wide apart as it is, and ends at once", async () => {
  const job = jobOf(repeats.straight(80, 70));
  const stage = createStage(job.arrangement, job.classes, entries.length, 2000);
  expect(await widen(stage, job, 2000, breathe)).toBe(2000);
});
