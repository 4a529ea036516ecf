import { type Effort, EVENLY, TIGHTLY } from "./effort.ts";
import { filledStage } from "./filled.ts";
import type { Job } from "./job.ts";
import { apportion, excess } from "./shares.ts";
import type { Stage } from "./stage.ts";

/** Narrowest step in which the number of motifs is sought, as a share of it. */
const FINENESS = 0.02;

/**
 * As many motifs as fit at `gap` µm with the shares kept: a free fill first; if that left small motifs short of
 * their share, the total is sought at which every entry still reaches its own. Progress ends at `until`.
 */
export async function packEvenly(job: Job, gap: number, effort: Effort, until: number): Promise<Stage> {
  const free = await filledStage(job, { gap, stream: "fill", effort, done: until / 4 });
  if (excess(free.used, job.shares).over < 1) return free;
  let high = free.used.reduce((a, b) => a + b, 0);
  let low = 0;
  let best: Stage | undefined;
  const sum = job.shares.reduce((a, b) => a + b, 0);
  // What the entry that fell most behind would allow: more than that fits, since the others will be fewer.
  let total = Math.floor(Math.min(...free.used.map((used, k) => used / job.shares[k]!)) * sum);
  for (let round = 1; high - low > Math.max(1, FINENESS * high); round++) {
    if (total <= low || total >= high) total = Math.floor((low + high) / 2);
    const entries = apportion(total, job.shares);
    const stage = await filledStage(job, {
      gap,
      stream: "fill",
      effort,
      entries,
      done: (until * (round + 1)) / (round + 4),
    });
    if (stage.used.every((used, k) => used >= entries[k]!)) {
      best = stage;
      low = total;
    } else high = total;
    total = Math.ceil((low + high) / 2);
  }
  return (
    best ??
    (await filledStage(job, { gap, stream: "fill", effort, entries: apportion(1, job.shares), done: until }))
  );
}

/** How many more than an even packing a tight one is asked for, in turn, when shares stand in its way. */
const DENSER: readonly number[] = [0.16, 0.08, 0.04];

/** As many motifs as can be pressed in at `gap` µm with the shares kept. Progress ends at `until`. */
export async function packTightly(job: Job, gap: number, until: number): Promise<Stage> {
  const free = await filledStage(job, { gap, stream: "fill", effort: TIGHTLY, done: until / 4 });
  if (excess(free.used, job.shares).over < 1) return free;
  const even = await packEvenly(job, gap, EVENLY, until / 2);
  for (const [k, more] of DENSER.entries()) {
    const total = even.used.reduce((a, b) => a + b, 0);
    const entries = apportion(Math.ceil(total * (1 + more)), job.shares);
    const done = until * (0.6 + 0.1 * k);
    const stage = await filledStage(job, { gap, stream: "fill", effort: TIGHTLY, entries, done });
    if (stage.used.every((used, entry) => used >= entries[entry]!)) return stage;
  }
  return even;
}
