import { badInput } from "../../errors/catalogue.ts";
import { isHopeless } from "./count-for.ts";
import { type Effort, EVENLY, LIGHTLY, TIGHTLY } from "./effort.ts";
import { evenOut } from "./even-out.ts";
import { packTightly } from "./evenly.ts";
import { isFarTooMany } from "./far-too-many.ts";
import { filledStage } from "./filled.ts";
import { countByEntry, countsFor, stillWanted } from "./held.ts";
import { takeBack } from "./in-proportion.ts";
import type { Job } from "./job.ts";
import { mix } from "./mix.ts";
import { bandQuotas } from "./plan.ts";
import { sampledCount } from "./sampled-count.ts";
import { meanDistance, type Stage } from "./stage.ts";
import { strewnStage } from "./strewn.ts";
import { widen } from "./widen.ts";

/** Halvings of the range in which the gap is sought. */
const HALVINGS = 6;
/** How hard the least gap is tried, in turn, before the number is refused. */
const EFFORTS: readonly Effort[] = [LIGHTLY, EVENLY, TIGHTLY];

/**
 * Exactly `count` motifs in the proportion of the shares, at the widest gap (from `gap` µm up) at which they fit.
 * @throws SprigwrightError `count-too-large` when they do not fit at `gap`
 */
export async function packCounted(job: Job, gap: number, count: number): Promise<Stage> {
  const stage = await countedStage(job, gap, count);
  if (stage) return stage;
  const sampled = await sampledCount(job, gap);
  const packed = sampled === undefined ? await packTightly(job, gap) : undefined;
  const fit = sampled ?? packed!.board.pieces.size + job.fixed.length;
  if (packed && fit >= count && takeBack(packed, countsFor(count, job.shares, already(job)))) {
    await widen(packed, job, gap, () => job.step(0.8));
    return packed;
  }
  throw badInput(
    "count-too-large",
    "toss > count",
    `${count} motifs do not fit with a gap of ${gap / 1000} mm: about ${Math.min(fit, count - 1)} do`,
    `ask for at most ${Math.min(fit, count - 1)}, or make the gap or the motifs smaller, or the repeat larger`,
  );
}

const already = ({ fixed, shares }: Job): number[] => countByEntry(fixed, shares.length);

/** What {@link packCounted} packs; undefined when so many are not got in by the ways that spread them evenly. */
export async function countedStage(job: Job, gap: number, count: number): Promise<Stage | undefined> {
  const wanted = stillWanted(count, job.shares, already(job));
  const more = count - job.fixed.length;
  const bands = bandQuotas(job.classes, wanted);
  if (isHopeless(job, gap, bands) || (await isFarTooMany(job, gap, bands))) return undefined;
  const attempt = async (wide: number, effort: Effort, done: number): Promise<Stage | undefined> => {
    const stage = await filledStage(job, { gap: wide, stream: "count", effort, bands, done });
    return stage.board.pieces.size === more ? stage : undefined;
  };
  const strewn = await strewnStage(job, gap, bands, () => job.step(0.4));
  if (strewn) {
    await evenOut(strewn.stage, job, gap, strewn.reached, () => job.step(0.8));
    return strewn.stage;
  }
  let best: Stage | undefined;
  for (const effort of EFFORTS) best ??= await attempt(gap, effort, 0.1);
  if (!best) return undefined;
  let low = gap;
  let high = gap + 1.2 * meanDistance(job.arrangement, count);
  for (let k = 0; k < HALVINGS; k++) {
    const middle = Math.round((low + high) / 2);
    const stage = await attempt(middle, LIGHTLY, 0.1 + (0.6 * (k + 1)) / HALVINGS);
    if (stage) {
      best = stage;
      low = middle;
    } else high = middle;
  }
  await mix(best, job, () => job.step(0.75));
  await widen(best, job, low, () => job.step(0.8));
  return best;
}
