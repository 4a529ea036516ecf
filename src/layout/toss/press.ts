import type { Random } from "../../seed/random.ts";
import { type Crowd, without } from "./crowd.ts";
import type { Pressing } from "./effort.ts";
import type { Job } from "./job.ts";
import { chooseNewcomers } from "./newcomers.ts";
import type { Band, SizeClass } from "./plan.ts";
import { crowdOf, freed, inOrder, type Newcomer, settle } from "./settle.ts";
import type { Stage } from "./stage.ts";
import type { Place } from "./taken.ts";

/**
 * Makes room for up to `most` more motifs of one class where none is free: they are put into the widest places,
 * overlapping, and all are pushed apart. Those that cannot be freed are taken out again. `room` says how many more
 * of a band may come.
 */
export async function pressIn(
  stage: Stage,
  job: Job,
  sizeClass: SizeClass,
  most: number,
  pressing: Pressing,
  random: Random,
  room: (band: Band) => number,
  breathe: () => Promise<void>,
): Promise<void> {
  // Never more at once than half of those that stand: if more are wanted, they hardly come free.
  const standing = stage.board.pieces.size;
  let batch = Math.max(1, Math.floor(Math.min(pressing.batch * most, standing / 2)));
  let placed = 0;
  let misses = 0;
  const spurned: Place[] = [];
  while (placed < most && misses < pressing.patience) {
    await breathe();
    const newcomers = await chooseNewcomers(
      stage,
      job,
      sizeClass,
      Math.min(batch, most - placed),
      random,
      room,
      spurned,
      breathe,
    );
    if (newcomers.length === 0) return;
    const came = await pressBatch(stage, job, newcomers, pressing, breathe);
    placed += came;
    if (came === newcomers.length) misses = Math.max(0, misses - 1);
    else if (batch === 1) {
      misses++;
      spurned.push({ x: newcomers[0]!.x, y: newcomers[0]!.y, r: 0 });
    } else batch = Math.floor(batch / 2);
  }
}

/** Rounds in which newcomers that cannot be freed are taken out. */
const ROUNDS = 5;
/** How far from an overlap the newcomer that caused it is sought, in largest radii. */
const FAR = 4;
/** Newcomers looked at for that between two breaths. */
const BREATH = 20_000;

/** Presses a batch in, without those that cannot be freed; returns how many stay. */
async function pressBatch(
  stage: Stage,
  job: Job,
  newcomers: readonly Newcomer[],
  { freeing, sweeps }: Pressing,
  breathe: () => Promise<void>,
): Promise<number> {
  const pieces = inOrder(stage);
  let crowd = crowdOf(job, pieces, newcomers);
  for (let round = 0; round < ROUNDS; round++) {
    await breathe();
    const left = await freed(stage, job, crowd, stage.gap, sweeps, breathe, freeing);
    const staying = crowd.movers.length - pieces.length;
    if (!left) return settle(stage, job, crowd, pieces) ? staying : 0;
    const out = await troublemakers(stage, crowd, left, pieces.length, breathe);
    if (out.length === 0 || staying === 1) return 0;
    // Never more than half at once: the others may come free by that alone.
    crowd = without(crowd, new Set(out.slice(0, Math.ceil(staying / 2))));
  }
  return 0;
}

/** The newcomers that still overlap, and the one nearest to each other body that does, if it is near: worst first. */
async function troublemakers(
  { images, radius }: Stage,
  { x, y }: Crowd,
  left: Float64Array,
  first: number,
  breathe: () => Promise<void>,
): Promise<number[]> {
  const trouble = new Map<number, number>();
  const blame = (i: number, depth: number): void => {
    if (depth > 0) trouble.set(i, Math.max(depth, trouble.get(i) ?? 0));
  };
  for (let i = first; i < left.length; i++) blame(i, left[i]!);
  let breath = BREATH;
  for (let i = 0; i < first; i++) {
    if (left[i] === 0) continue;
    breath -= left.length - first;
    if (breath <= 0) {
      breath = BREATH;
      await breathe();
    }
    const at = [x[i]!, y[i]!, x[i]!, y[i]!];
    let least = FAR * radius * FAR * radius;
    let nearest = -1;
    for (const [a, b, c, d, e, f] of images.operations)
      for (let k = first; k < left.length; k++) {
        const px = a * x[k]! + c * y[k]! + e;
        const py = b * x[k]! + d * y[k]! + f;
        images.between([px, py, px, py], at, FAR * radius, (dx, dy) => {
          const ox = px + dx - x[i]!;
          const oy = py + dy - y[i]!;
          if (ox * ox + oy * oy >= least) return;
          least = ox * ox + oy * oy;
          nearest = k;
        });
      }
    if (nearest >= 0) blame(nearest, left[i]!);
  }
  return [...trouble].sort(([i, a], [k, b]) => b - a || i - k).map(([i]) => i);
}
