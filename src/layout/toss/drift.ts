import type { Job } from "./job.ts";
import { pushApart } from "./settle.ts";
import type { Stage } from "./stage.ts";

/** Rounds in which those of a kind drift apart at first, and the fewest before it is left at that. */
const FIRST = 40;
const LEAST = 2;
/** Rounds of pushing all free again. */
const SWEEPS = 150;
/** Most turns of both. */
const TURNS = 16;

/** Lets motifs of a kind drift apart, a little at a time, as far as all can be pushed free again. */
export async function driftApart(stage: Stage, job: Job, breathe: () => Promise<void>): Promise<void> {
  if (job.spreads.every((spread) => spread === 0)) return;
  let drifting = FIRST;
  for (let turn = 0; turn < TURNS && drifting >= LEAST; turn++) {
    await breathe();
    const went = await pushApart(stage, job, stage.gap, SWEEPS, breathe, drifting);
    if (!went) drifting = Math.floor(drifting / 2);
  }
}
