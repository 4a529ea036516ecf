import type { Random } from "../../seed/random.ts";
import type { Piece } from "./board.ts";
import { type Patch, patchAround } from "./field.ts";
import { fillClass } from "./fill.ts";
import type { Job } from "./job.ts";
import { excess } from "./shares.ts";
import { type Stage, takeUp, tally } from "./stage.ts";

/** Places worked over for each piece there is at the start. */
const STEPS = 18;
/**
 * Most field cells read or written in all, about: a step costs as much as the field is fine, and with motifs of very
 * unlike sizes the field is fine everywhere.
 */
const MOST_CELLS = 1.5e8;
/** Poses tried at a cell. */
const TRIES = 24;
/** Spread asked for, see {@link Seeker.rounds}. */
const ROUNDS: readonly number[] = [0.6];
/** Points looked at for each place chosen. */
const VOIDS = 12;
/** How far around a hole motifs are taken up, as a share of the largest radius. */
const REACH: readonly [number, number] = [0.6, 1];
/** How far an entry may be over its share of the motifs of one size. */
const CLASS_OVER = 1.5;
/** How many an entry may be ahead of its share when another finds no more place. */
const LEEWAY = 1;
/** How far beyond the motifs taken up new ones may start, as a share of the largest radius. */
const MARGIN = 0.4;

/**
 * Works over a filled stage to close its holes, by ruin and recreate (Schrimpf and others 2000): again and again
 * the motifs around a hole are taken up and the place is filled anew, which is kept when it came out no emptier
 * and the shares still hold. Progress goes on from `from`.
 */
export async function rework(stage: Stage, job: Job, from: number): Promise<void> {
  const random = job.random.fork("rework");
  const { board, field } = stage;
  if (board.pieces.size === 0) return;
  const largest = stage.radius;
  const steps = Math.min(STEPS * board.pieces.size, Math.ceil(MOST_CELLS / field.values.length));
  const before = field.values.slice();
  for (let step = 0; step < steps; step++) {
    const breathe = (): Promise<void> => job.step(from + ((1 - from) * step) / steps);
    if (step % 16 === 0) await breathe();
    const [x, y] = findHole(stage, random);
    const reach = largest * random.between(...REACH);
    const old = piecesAround(stage, x, y, reach);
    if (old.length === 0) continue;
    before.set(field.values);
    const { area } = stage;
    const over = overs(stage, job);
    const fresh = await remake(
      stage,
      job,
      random,
      old,
      patchAround(field, x, y, reach + MARGIN * largest),
      breathe,
    );
    if (stage.area >= area && isFair(overs(stage, job), over)) continue;
    for (const piece of fresh) {
      board.remove(piece);
      tally(stage, piece, -1);
    }
    for (const piece of old) {
      board.restore(piece);
      tally(stage, piece, 1);
    }
    field.values.set(before);
  }
}

/** Takes pieces up and fills their place anew; returns what was put there. */
async function remake(
  stage: Stage,
  job: Job,
  random: Random,
  old: readonly Piece[],
  patch: Patch,
  breathe: () => Promise<void>,
): Promise<Piece[]> {
  const fresh: Piece[] = [];
  for (const piece of old) takeUp(stage, piece);
  for (const sizeClass of job.classes)
    for (const piece of await fillClass(stage, sizeClass, {
      ...job,
      random,
      tries: TRIES,
      rounds: ROUNDS,
      leeway: LEEWAY,
      room: () => Infinity,
      tight: true,
      patch,
      breathe,
      fed: (band) => (stage.used[band.entry]! + stage.placed.get(band)!) / job.shares[band.entry]!,
    }))
      fresh.push(piece);
  return fresh;
}

/** How far any entry is over its share, first of all motifs, then of those of each class. */
function overs(stage: Stage, job: Job): number[] {
  const within = job.classes.map((bands) =>
    excess(
      bands.map((band) => stage.placed.get(band)!),
      bands.map((band) => job.shares[band.entry]!),
    ),
  );
  return [excess(stage.used, job.shares), ...within].map(({ over }) => over);
}

/** Whether the shares hold, or at least no worse than before; within a class they may be off a little more. */
const isFair = (now: readonly number[], before: readonly number[]): boolean =>
  now.every((over, k) => over < Math.max(k === 0 ? 1 : CLASS_OVER, before[k]!));

/** The roomiest of some points of the unit. */
function findHole({ field, arrangement }: Stage, random: Random): [x: number, y: number] {
  const { cell, left, top, columns, values } = field;
  let best: [number, number] = [0, 0];
  let most = -Infinity;
  for (let k = 0; k < VOIDS; k++) {
    const x = random.next() * arrangement.unit.width;
    const y = random.next() * arrangement.unit.height;
    const value = values[Math.round((y - top) / cell) * columns + Math.round((x - left) / cell)]!;
    if (value <= most) continue;
    most = value;
    best = [x, y];
  }
  return best;
}

/** The pieces with a copy whose centre is within reach. */
function piecesAround(stage: Stage, x: number, y: number, reach: number): Piece[] {
  const found = new Set<Piece>();
  stage.board.search(x - reach, y - reach, x + reach, y + reach, (copy) => {
    const dx = copy.cx - x;
    const dy = copy.cy - y;
    if (dx * dx + dy * dy < reach * reach) found.add(copy.piece);
    return false;
  });
  return [...found];
}
