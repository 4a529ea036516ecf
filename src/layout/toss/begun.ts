import { nearestCount } from "./count-for.ts";
import { driftApart } from "./drift.ts";
import { EVENLY } from "./effort.ts";
import { filledStage } from "./filled.ts";
import { countByEntry, countsFor } from "./held.ts";
import type { Job } from "./job.ts";
import { mingle } from "./mingle.ts";
import type { Stage } from "./stage.ts";
import { widen } from "./widen.ts";

/** What is filled in at first, as a share of the area that a filling covers that keeps no shares, and then ever less. */
const START = 0.9;
const LESS = 0.92;

/**
 * Motifs with the shares kept and the kinds well mixed, not yet as many as go at `gap` µm: nearly what covers `area` (µm²), or
 * as many as can be filled in. Undefined when not even one goes.
 */
export async function begunStage(
  job: Job,
  gap: number,
  area: number,
  breathe: () => Promise<void>,
): Promise<Stage | undefined> {
  const already = countByEntry(job.fixed, job.shares.length);
  for (
    let total = nearestCount(job, START * area);
    total > job.fixed.length;
    total = Math.floor(LESS * total)
  ) {
    const entries = countsFor(total, job.shares, already);
    const stage = await filledStage(job, { gap, stream: "fill", effort: EVENLY, entries, done: 0.2 });
    if (stage.used.some((used, entry) => used < entries[entry]!)) continue;
    await driftApart(stage, job, breathe);
    await mingle(stage, job, breathe);
    await widen(stage, job, gap, breathe);
    return stage;
  }
  return undefined;
}
