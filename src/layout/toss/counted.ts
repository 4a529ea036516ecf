import { badInput } from "../../errors/catalogue.ts";
import { packEvenly } from "./evenly.ts";
import { countByEntry, stillWanted } from "./held.ts";
import { filledStage, type Job } from "./job.ts";
import { bandQuotas } from "./plan.ts";
import type { Stage } from "./stage.ts";

/** Halvings of the range in which the gap is sought. */
const HALVINGS = 8;
/** Fresh attempts at the least gap before the number is refused. */
const ATTEMPTS = 3;

/**
 * Exactly `count` motifs in the proportion of the shares, at the widest gap (from `gap` µm up) at which they fit.
 * @throws SprigwrightError `count-too-large` when they do not fit at `gap`
 */
export async function packCounted(job: Job, gap: number, count: number): Promise<Stage> {
  const wanted = stillWanted(count, job.shares, countByEntry(job.fixed, job.shares.length));
  const more = count - job.fixed.length;
  const bands = bandQuotas(job.classes, wanted);
  const attempt = async (wide: number, stream: string, done: number): Promise<Stage | undefined> => {
    const stage = await filledStage(job, { gap: wide, stream, bands, done });
    return stage.board.pieces.size === more ? stage : undefined;
  };
  let best: Stage | undefined;
  for (let k = 0; k < ATTEMPTS && !best; k++) best = await attempt(gap, `count-${k}`, 0.1);
  if (!best) {
    const fit = (await packEvenly(job, gap, 1)).board.pieces.size + job.fixed.length;
    throw badInput(
      "count-too-large",
      "toss > count",
      `${count} motifs do not fit with a gap of ${gap / 1000} mm: about ${Math.min(fit, count - 1)} do`,
      `ask for at most ${Math.min(fit, count - 1)}, or make the gap or the motifs smaller, or the repeat larger`,
    );
  }
  const { width, height } = job.arrangement.unit;
  let low = gap;
  let high = gap + 1.2 * Math.sqrt((width * height) / count);
  for (let k = 0; k < HALVINGS; k++) {
    const middle = Math.round((low + high) / 2);
    const stage = await attempt(middle, "count", 0.1 + (0.7 * (k + 1)) / HALVINGS);
    if (stage) {
      best = stage;
      low = middle;
    } else high = middle;
  }
  return best;
}
