import { transformOutline } from "../../geometry/outline.ts";
import { groundOf, nearestCount } from "./count-for.ts";
import type { Pressing } from "./effort.ts";
import { countByEntry, stillWanted } from "./held.ts";
import type { Job } from "./job.ts";
import { mingle } from "./mingle.ts";
import { type Band, bandQuotas } from "./plan.ts";
import { pressIn } from "./press.ts";
import { inOrder } from "./settle.ts";
import { createStage, exchange, type Stage } from "./stage.ts";
import { countIn } from "./stood.ts";

/** Share of the ground that the first number covers: it nearly always fits. */
const FIRST = 0.22;
/** First addition, and the least before it is left at that, as shares of the number that stands. */
const MORE = 0.2;
const LEAST = 0.02;
/** How many additions of one motif may fail: one for so much patience, and at least so many. */
const MISSES = 5;
const LEAST_MISSES = 3;

/**
 * As many motifs as can be pressed in at `gap` µm with the shares kept: a number that fits, and then more and more in
 * the same proportion, large ones first, into the widest places. Empty when not even one of each fits.
 */
export async function packInProportion(
  job: Job,
  gap: number,
  pressing: Pressing,
  breathe: () => Promise<void>,
): Promise<Stage> {
  const stage = createStage(job.arrangement, job.classes, job.shares.length, gap, job.terrain);
  countIn(stage, job.fixed);
  const already = countByEntry(job.fixed, job.shares.length);
  let total = 0;
  let misses = 0;
  let more = Math.max(job.shares.length, nearestCount(job, FIRST * groundOf(job)));
  for (let round = 0; more >= 1; round++) {
    const wanted = stillWanted(total + more, job.shares, already);
    if (await pressAll(stage, job, wanted, pressing, `round-${round}`, breathe)) {
      total += more;
      more = Math.max(1, Math.floor(MORE * total));
    } else if (more > 1 && more / 2 > LEAST * total) more = Math.floor(more / 2);
    else if (++misses >= Math.max(LEAST_MISSES, pressing.patience / MISSES)) more = 0;
  }
  await mingle(stage, job, breathe);
  return stage;
}

/** Presses in what is still wanted of each entry, from large to small; if that does not go, nothing changes. */
async function pressAll(
  stage: Stage,
  job: Job,
  wanted: readonly number[],
  pressing: Pressing,
  stream: string,
  breathe: () => Promise<void>,
): Promise<boolean> {
  const before = inOrder(stage);
  const quotas = bandQuotas(job.classes, wanted);
  const room = (band: Band): number => Math.max(0, quotas.get(band)! - stage.placed.get(band)!);
  for (const [index, sizeClass] of job.classes.entries()) {
    const owed = (): number => sizeClass.reduce((sum, band) => sum + room(band), 0);
    if (owed() === 0) continue;
    const random = job.random.fork(`${stream}-${index}`);
    await pressIn(stage, job, sizeClass, owed(), { ...pressing, batch: 1 }, random, room, breathe);
    if (owed() === 0) continue;
    exchange(stage, inOrder(stage), before, (pose) =>
      transformOutline(pose.body.outline, pose.matrix, pose.body.scratch),
    );
    return false;
  }
  return true;
}
