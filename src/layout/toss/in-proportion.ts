import { TIGHTLY } from "./effort.ts";
import { countByEntry, countsFor, stillWanted } from "./held.ts";
import type { Job } from "./job.ts";
import { type Band, bandQuotas } from "./plan.ts";
import { pressIn } from "./press.ts";
import { inOrder, putBack, stir } from "./settle.ts";
import { exchange, type Stage } from "./stage.ts";

/** Largest addition, as a share of the number that stands and in motifs, and the least before it is left at that. */
const MORE = 0.2;
const AT_ONCE = 12;
const LEAST = 0.02;
/** Fruitless tries of one motif before an addition is given up, for each that is added. */
const PATIENCE = 0.5;
/** Rounds in which those of a kind drift apart, before an addition is pushed free. */
const DRIFT = 30;
/** After an addition that did not go all are stirred: towards how much more than the gap, and for how many rounds. */
const WIDER = 1.5;
const TOWARDS = 40;
/** Rounds times motifs at most, for each miss, and the fewest rounds: among many, what the last rounds add shows less. */
const WORK = 300;
const FEWEST = 4;

/** How hard more and more motifs are pressed in. */
export interface Persistence {
  /** Least additions that may fail. */
  readonly misses: number;
  /** Fruitless tries of one motif, at least, before an addition is given up. */
  readonly patience: number;
  /** Rounds of pushing for one try. */
  readonly sweeps: number;
}

/**
 * Presses more and more motifs into a stage whose shares hold, in the same proportion: large ones first, into the widest
 * places, as many as go, until so many of the least additions have failed. `breathe` is told how much of it is done, 0 to 1.
 */
export async function pressInProportion(
  stage: Stage,
  job: Job,
  persistence: Persistence,
  breathe: (done: number) => Promise<void>,
): Promise<void> {
  let total = stage.used.reduce((sum, used) => sum + used, 0);
  let least = Infinity; // number that did not go
  const { misses } = persistence;
  let left = misses;
  const rounds = Math.max(FEWEST, Math.floor((WORK * misses) / total));
  for (let round = 0; round < rounds && left > 0; round++) {
    const done = Math.max(round / rounds, 1 - left / misses);
    const more = Math.max(1, Math.floor(Math.min(MORE * total, AT_ONCE, (least - total) / 2)));
    const aim = total + more;
    total = await pressSome(stage, job, persistence, total, aim, `round-${round}`, () => breathe(done));
    if (total === aim) continue;
    least = aim;
    if (more > Math.max(1, LEAST * total)) continue;
    left--;
    await stir(stage, job, Math.round(stage.gap * WIDER), TOWARDS, () => breathe(done), DRIFT);
  }
}

/**
 * Presses motifs in, from large to small, up to `aim` in all, or as many as go with the shares kept. Returns how many stand
 * then; where no more than `total` go, nothing changes.
 */
async function pressSome(
  stage: Stage,
  job: Job,
  { patience: least, sweeps }: Persistence,
  total: number,
  aim: number,
  stream: string,
  breathe: () => Promise<void>,
): Promise<number> {
  const already = countByEntry(job.fixed, job.shares.length);
  const before = inOrder(stage);
  let goal = aim;
  let wanted = countsFor(goal, job.shares, already);
  const missing = (entry: number): number => Math.max(0, wanted[entry]! - stage.used[entry]!);
  for (const [index, sizeClass] of job.classes.entries()) {
    const later = job.classes.slice(index + 1).flat();
    const isLast = ({ entry }: Band): boolean => !later.some((other) => other.entry === entry);
    const quotas = bandQuotas(job.classes, stillWanted(goal, job.shares, already));
    const room = (band: Band): number =>
      isLast(band)
        ? missing(band.entry)
        : Math.min(missing(band.entry), Math.max(0, quotas.get(band)! - stage.placed.get(band)!));
    const owed = sizeClass.reduce((sum, band) => sum + room(band), 0);
    if (owed > 0) {
      const patience = Math.max(least, Math.ceil(PATIENCE * owed));
      const pressing = { ...TIGHTLY.pressing!, sweeps, freeing: { drift: DRIFT }, patience, batch: 1 };
      const random = job.random.fork(`${stream}-${index}`);
      await pressIn(stage, job, sizeClass, owed, pressing, random, room, breathe);
    }
    // What no later class can make up for lowers the goal of all.
    while (goal > total && sizeClass.some((band) => isLast(band) && missing(band.entry) > 0))
      wanted = countsFor(--goal, job.shares, already);
    if (goal === total) break;
  }
  if (goal > total && takeBack(stage, wanted)) return goal;
  putBack(stage, before);
  return total;
}

/** Takes out what is more than wanted of each entry, the last first; returns whether that went. */
export function takeBack(stage: Stage, wanted: readonly number[]): boolean {
  const surplus = stage.used.map((used, entry) => used - wanted[entry]!);
  const gone = inOrder(stage)
    .reverse()
    .filter(({ body }) => surplus[body.entry]!-- > 0);
  return exchange(stage, gone, [], () => undefined);
}
