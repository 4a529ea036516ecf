import type { Random } from "../../seed/random.ts";
import type { Pressing } from "./effort.ts";
import type { Job } from "./job.ts";
import { chooseNewcomers } from "./newcomers.ts";
import type { Band, SizeClass } from "./plan.ts";
import { crowdOf, freed, inOrder, type Newcomer, settle } from "./settle.ts";
import type { Stage } from "./stage.ts";

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
  let batch = Math.max(1, Math.floor(pressing.batch * most));
  let placed = 0;
  let misses = 0;
  while (placed < most && misses < pressing.patience) {
    await breathe();
    const newcomers = chooseNewcomers(stage, job, sizeClass, Math.min(batch, most - placed), random, room);
    if (newcomers.length === 0) return;
    const came = pressBatch(stage, job, newcomers, pressing.sweeps);
    placed += came;
    if (came === newcomers.length) misses = Math.max(0, misses - 1);
    else if (batch === 1) misses++;
    else batch = Math.floor(batch / 2);
  }
}

/** Presses a batch in, or the better half of it, and so on; returns how many could stay. */
function pressBatch(stage: Stage, job: Job, newcomers: readonly Newcomer[], sweeps: number): number {
  const pieces = inOrder(stage);
  let staying = newcomers;
  while (staying.length > 0) {
    const crowd = crowdOf(job, pieces, staying);
    const left = freed(stage, job, crowd, stage.gap, sweeps);
    if (!left) return settle(stage, job, crowd, pieces) ? staying.length : 0;
    const order = staying.map((newcomer, k) => ({ newcomer, left: left[pieces.length + k]!, k }));
    order.sort((a, b) => a.left - b.left || a.k - b.k);
    staying = order.slice(0, Math.floor(order.length / 2)).map(({ newcomer }) => newcomer);
  }
  return 0;
}
