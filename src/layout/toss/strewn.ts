import { driftApart } from "./drift.ts";
import { TIGHTLY } from "./effort.ts";
import type { Job } from "./job.ts";
import { mingle } from "./mingle.ts";
import type { Band } from "./plan.ts";
import { pressIn } from "./press.ts";
import { createStage, type Stage } from "./stage.ts";
import { countIn } from "./stood.ts";
import { widen } from "./widen.ts";

/** Motifs that come at once, as a share of their class. */
const BATCH = 0.025;

/** A strewn stage, and the gap that its motifs came to (µm). */
export interface Strewn {
  readonly stage: Stage;
  readonly reached: number;
}

/**
 * A limited number of each band, strewn evenly over the ground: class by class from large to small, always into the
 * widest place there is, and after each class those of a kind drift apart and all are pushed as far apart as they go.
 * Undefined when they do not fit at `gap` µm.
 */
export async function strewnStage(
  job: Job,
  gap: number,
  bands: ReadonlyMap<Band, number>,
  breathe: () => Promise<void>,
): Promise<Strewn | undefined> {
  const stage = createStage(job.arrangement, job.classes, job.shares.length, gap, job.terrain);
  countIn(stage, job.fixed);
  const room = (band: Band): number => bands.get(band)! - stage.placed.get(band)!;
  let reached = gap;
  for (const [index, sizeClass] of job.classes.entries()) {
    const owed = (): number => sizeClass.reduce((sum, band) => sum + room(band), 0);
    if (owed() === 0) continue;
    const random = job.random.fork(`strewn-${index}`);
    const pressing = { ...TIGHTLY.pressing!, batch: BATCH };
    await pressIn(stage, job, sizeClass, owed(), pressing, random, room, breathe);
    if (owed() > 0) return undefined;
    await driftApart(stage, job, breathe);
    await mingle(stage, job, breathe);
    reached = await widen(stage, job, gap, breathe);
  }
  return { stage, reached };
}
