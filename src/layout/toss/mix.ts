import { driftApart } from "./drift.ts";
import type { Job } from "./job.ts";
import { mingle } from "./mingle.ts";
import type { Stage } from "./stage.ts";

/** Mixes kinds, and lets those of a kind drift apart, as far as there is room. */
export async function mix(stage: Stage, job: Job, breathe: () => Promise<void>): Promise<void> {
  if (job.spreads.every((spread) => spread === 0)) return;
  await mingle(stage, job, breathe);
  await driftApart(stage, job, breathe);
}
