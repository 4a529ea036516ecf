import fc from "fast-check";
import { expect, test } from "vitest";
import { bodiesOf } from "../../../src/layout/toss/body.ts";
import { drawnScale } from "../../../src/layout/toss/drawn-scale.ts";
import { LIGHTLY } from "../../../src/layout/toss/effort.ts";
import { filledStage } from "../../../src/layout/toss/filled.ts";
import { jobFor } from "../../../src/layout/toss/job.ts";
import { chooseNewcomers } from "../../../src/layout/toss/newcomers.ts";
import { planClasses } from "../../../src/layout/toss/plan.ts";
import { disc, entriesOf, options, repeats, tools } from "./fixtures.ts";

test("a scale is never outside the range asked, nor more than half a thousandth from what was drawn", () => {
  const any = fc.double({ min: 0.01, max: 20, noNaN: true });
  fc.assert(
    fc.property(any, any, fc.double({ min: 0, max: 1, noNaN: true }), (p, q, part) => {
      const [low, high] = [Math.min(p, q), Math.max(p, q)];
      const scale = Math.min(high, low + part * (high - low));
      const drawn = drawnScale(scale, [low, high]);
      expect(drawn >= low && drawn <= high).toBe(true);
      expect(Math.abs(drawn - scale)).toBeLessThan(0.0005001);
    }),
    { seed: 8, numRuns: 500 },
  );
  expect(drawnScale(0.72139, [0.4, 1.3])).toBe(0.721);
});

test("newcomers keep to a range between two thousandths, and thousands of them leave time to breathe", async () => {
  const range = [0.0506, 0.0509] as const;
  const entries = entriesOf(disc(50)).map((entry) => ({ ...entry, scale: range }));
  const given = options({ entries });
  const job = jobFor(given, planClasses(entries, bodiesOf(entries)), tools("n", repeats.straight(60, 60)));
  const stage = await filledStage(job, { gap: 2000, stream: "fill", effort: LIGHTLY, done: 0 });
  let breaths = 0;
  const newcomers = await chooseNewcomers(
    stage,
    job,
    job.classes[0]!,
    2000,
    job.random.fork("n"),
    () => Infinity,
    [],
    async () => void breaths++,
  );
  expect(newcomers).toHaveLength(2000);
  for (const { scale } of newcomers) expect(scale >= range[0] && scale <= range[1]).toBe(true);
  expect(breaths).toBeGreaterThan(40);
});
