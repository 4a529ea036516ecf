import { describe, expect, test } from "vitest";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { bodiesOf } from "../../../src/layout/toss/body.ts";
import { packCounted } from "../../../src/layout/toss/counted.ts";
import { packEvenly, packTightly } from "../../../src/layout/toss/evenly.ts";
import { isFarTooMany } from "../../../src/layout/toss/far-too-many.ts";
import { type Job, jobFor } from "../../../src/layout/toss/job.ts";
import type { TossOptions } from "../../../src/layout/toss/options.ts";
import { bandQuotas, planClasses } from "../../../src/layout/toss/plan.ts";
import { sampledCount } from "../../../src/layout/toss/sampled-count.ts";
import { apportion } from "../../../src/layout/toss/shares.ts";
import { crescent, disc, entriesOf, leaf, mix, options, repeats, tools } from "./fixtures.ts";

const jobOf = (given: Partial<TossOptions>, arrangement: Arrangement): Job => {
  const all = options(given);
  return jobFor(all, planClasses(all.entries, bodiesOf(all.entries, 0)), tools("counted", arrangement));
};
const sized = (scale: number, entries = entriesOf(disc(18))): TossOptions["entries"] =>
  entries.map((entry) => ({ ...entry, scale: [scale, scale] as const }));
const isFar = (job: Job, gap: number, count: number): Promise<boolean> =>
  isFarTooMany(job, gap, bandQuotas(job.classes, apportion(count, job.shares)));

describe("a count is far too many", () => {
  const ground = repeats.straight(56, 50);
  test.each<[string, Partial<TossOptions>]>([
    ["discs", { gap: 0.5, entries: sized(0.16) }],
    [
      "crescents that face one way",
      { gap: 0.3, direction: "one-way", entries: sized(0.18, entriesOf(crescent())) },
    ],
  ])("only where pressing gets far fewer in: %s", async (_, given) => {
    const job = jobOf(given, ground);
    const gap = given.gap! * 1000;
    const most = (await packTightly(job, gap)).board.pieces.size;
    expect(most).toBeGreaterThan(50);
    expect(await isFar(job, gap, most)).toBe(false);
    expect(await isFar(job, gap, Math.ceil(1.05 * most))).toBe(false);
    expect(await isFar(job, gap, 2 * most)).toBe(true);
  });

  test("for discs by what is known: none lie denser than π / √12, and strewn ones jam at about 0.547", async () => {
    // Densest packing of equal discs: Thue 1910; the jamming of discs strewn at random: Feder 1980. Both from memory.
    const job = jobOf({ gap: 0, entries: sized(0.15) }, ground);
    const each = Math.PI * 2.7 * 2.7;
    const holding = (share: number): number => Math.floor((share * 56 * 50) / each);
    expect(await isFar(job, 0, holding(0.547))).toBe(false);
    expect(await isFar(job, 0, holding(0.84))).toBe(false);
    expect(await isFar(job, 0, holding(1.46))).toBe(true);
  });
});

describe("a count from a sample", () => {
  test("is about what the whole ground holds, and not more", async () => {
    const job = jobOf({ gap: 0.5, entries: sized(0.15) }, repeats["half-drop"](200, 165));
    const whole = (await packEvenly(job, 500)).board.pieces.size;
    const sampled = (await sampledCount(job, 500))!;
    expect(sampled).toBeGreaterThan(0.9 * whole);
    expect(sampled).toBeLessThan(1.02 * whole);
  });

  test.each<[string, Partial<TossOptions>, Arrangement]>([
    ["a ground of few motifs", {}, repeats.straight(70, 60)],
    ["mirrors", {}, repeats.mirror(220, 160)],
    ["an area", { inside: "M0 0H200V150H0Z" }, repeats.straight(220, 160)],
    ["sizes that differ much", { entries: mix([0.05, 0.3]) }, repeats.straight(220, 160)],
  ])("is not taken for %s", async (_, given, arrangement) => {
    expect(
      await sampledCount(jobOf({ gap: 0.5, entries: sized(0.15), ...given }, arrangement), 500),
    ).toBeUndefined();
  });
});

test("a count is met that a packed toss holds, whatever it takes", async () => {
  const job = jobOf({ gap: 2, entries: sized(0.5, entriesOf(leaf())) }, repeats.straight(70, 60));
  const most = (await packTightly(job, 2000)).board.pieces.size;
  expect(most).toBeGreaterThan(15);
  expect((await packCounted(job, 2000, most)).board.pieces.size).toBe(most);
});
