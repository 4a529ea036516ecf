import { transformOutline } from "../../geometry/outline.ts";
import type { Pressing } from "./effort.ts";
import { countByEntry, stillWanted } from "./held.ts";
import type { Job } from "./job.ts";
import { type Band, bandQuotas } from "./plan.ts";
import { pressIn } from "./press.ts";
import { inOrder } from "./settle.ts";
import { exchange, type Stage } from "./stage.ts";

/** First addition, and the least before it is left at that, as shares of the number that stands. */
const MORE = 0.2;
const LEAST = 0.02;
/** How many least additions may fail: one for so much patience. */
const MISSES = 5;

/** Rounds times motifs at most, and the fewest rounds: among many, what the last rounds add shows less. */
const WORK = 3000;
const FEWEST = 2;

/**
 * Presses more and more motifs into a stage whose shares hold, in the same proportion: large ones first, into the widest
 * places, as many as go.
 */
export async function pressInProportion(
  stage: Stage,
  job: Job,
  pressing: Pressing,
  breathe: () => Promise<void>,
): Promise<void> {
  const already = countByEntry(job.fixed, job.shares.length);
  let total = stage.used.reduce((sum, used) => sum + used, 0);
  let least = Infinity; // number that did not go
  let misses = 0;
  const rounds = Math.max(FEWEST, Math.floor(WORK / total));
  for (let round = 0; round < rounds && misses < Math.max(1, pressing.patience / MISSES); round++) {
    const more = Math.max(1, Math.floor(Math.min(MORE * total, (least - total) / 2)));
    const wanted = stillWanted(total + more, job.shares, already);
    if (await pressAll(stage, job, wanted, already, pressing, `round-${round}`, breathe)) total += more;
    else {
      least = total + more;
      if (more <= Math.max(1, LEAST * total)) misses++;
    }
  }
}

/** Presses in what is still wanted of each entry, from large to small; if that does not go, nothing changes. */
async function pressAll(
  stage: Stage,
  job: Job,
  wanted: readonly number[],
  already: readonly number[],
  pressing: Pressing,
  stream: string,
  breathe: () => Promise<void>,
): Promise<boolean> {
  const before = inOrder(stage);
  const quotas = bandQuotas(job.classes, wanted);
  const missing = (entry: number): number =>
    Math.max(0, wanted[entry]! + already[entry]! - stage.used[entry]!);
  for (const [index, sizeClass] of job.classes.entries()) {
    const later = job.classes.slice(index + 1).flat();
    const room = (band: Band): number =>
      later.some(({ entry }) => entry === band.entry)
        ? Math.min(missing(band.entry), Math.max(0, quotas.get(band)! - stage.placed.get(band)!))
        : missing(band.entry);
    const owed = sizeClass.reduce((sum, band) => sum + room(band), 0);
    if (owed === 0) continue;
    const random = job.random.fork(`${stream}-${index}`);
    const patience = Math.ceil(pressing.patience / MISSES);
    await pressIn(stage, job, sizeClass, owed, { ...pressing, patience, batch: 1 }, random, room, breathe);
    // One that no later class can make up for: the rest need not be tried.
    if (sizeClass.some(({ entry }) => missing(entry) > 0 && !later.some((other) => other.entry === entry)))
      break;
  }
  if (job.shares.every((_, entry) => missing(entry) === 0)) return true;
  exchange(stage, inOrder(stage), before, (pose) =>
    transformOutline(pose.body.outline, pose.matrix, pose.body.scratch),
  );
  return false;
}
