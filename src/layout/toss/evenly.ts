import { type Effort, EVENLY, LIGHTLY, type Pressing, TIGHTLY } from "./effort.ts";
import { evenOut } from "./even-out.ts";
import { filledStage } from "./filled.ts";
import { pressInProportion } from "./in-proportion.ts";
import type { Job } from "./job.ts";
import { mingle } from "./mingle.ts";
import { inOrder } from "./settle.ts";
import { apportion, excess } from "./shares.ts";
import { exchange, type Stage } from "./stage.ts";
import { widen } from "./widen.ts";

/** How hard motifs are pressed in where shares stand in the way of filling: what goes easily. */
const GENTLY: Pressing = { sweeps: 60, patience: 1, batch: 1, more: 0, rest: 0 };

/** Turns of evening out: a filled ground has little room for it. */
const TURNS = 1;

/** Progress at which motifs begin to be pushed apart. */
const SPREAD_FROM = 0.7;

/**
 * Filled from large to small, which is quick; if that leaves some short of their shares, filled with fewer, and more
 * pressed in in proportion.
 */
async function packFairly(job: Job, gap: number, effort: Effort, pressing: Pressing): Promise<Packed> {
  const fill = (how: Effort): Promise<Stage> =>
    filledStage(job, { gap, stream: "fill", effort: how, done: 0.2 });
  const isFair = (stage: Stage): boolean =>
    excess(stage.used, job.shares).over < 1 || takeSurplus(stage, job.shares);
  // A tight filling takes long: it is made only where a quick one shows that shares will hold.
  const filled = await fill(effort === TIGHTLY ? EVENLY : effort);
  if (isFair(filled)) {
    if (effort !== TIGHTLY) return { stage: filled, quick: true };
    const tight = await fill(TIGHTLY);
    if (isFair(tight)) return { stage: tight, quick: true };
  }
  const stage = await filledWithFewer(job, gap, filled);
  if (stage.board.pieces.size === 0) return { stage: filled, quick: true };
  const breathe = (): Promise<void> => job.step(0.6);
  // Before it is full: then they can still change places.
  await mingle(stage, job, breathe);
  await pressInProportion(stage, job, pressing, breathe);
  return { stage, quick: false };
}

/** How many may be taken out again so that shares hold, as a share of all. */
const FEW = 0.02;

/** Takes the last of those out that are more than their share, if they are few; returns whether shares hold now. */
function takeSurplus(stage: Stage, shares: readonly number[]): boolean {
  const all = stage.used.reduce((a, b) => a + b, 0);
  let total = all;
  const fits = (): boolean => apportion(total, shares).every((number, k) => number <= stage.used[k]!);
  while (total > 0 && total >= (1 - FEW) * all && !fits()) total--;
  if (total < (1 - FEW) * all) return false;
  const surplus = apportion(total, shares).map((number, k) => stage.used[k]! - number);
  const gone = inOrder(stage)
    .reverse()
    .filter(({ body }) => surplus[body.entry]!-- > 0);
  return gone.length === all - total && exchange(stage, gone, [], () => undefined);
}

/** Coarsest step in which the number is sought, as a share of it. */
const FINENESS = 0.15;

/** The most that an even filling with the shares kept reaches, sought by halving. */
async function filledWithFewer(job: Job, gap: number, filled: Stage): Promise<Stage> {
  let high = filled.used.reduce((a, b) => a + b, 0);
  let low = 0;
  let best: Stage | undefined;
  const sum = job.shares.reduce((a, b) => a + b, 0);
  // What the entry that fell most behind would allow: more than that fits, since the others will be fewer.
  let total = Math.floor(Math.min(...filled.used.map((used, k) => used / job.shares[k]!)) * sum);
  for (let round = 1; high - low > Math.max(1, FINENESS * high); round++) {
    if (total <= low || total >= high) total = Math.floor((low + high) / 2);
    const entries = apportion(total, job.shares);
    const done = 0.2 + (0.4 * round) / (round + 4);
    const stage = await filledStage(job, { gap, stream: "fill", effort: EVENLY, entries, done });
    if (stage.used.every((used, k) => used >= entries[k]!)) {
      best = stage;
      low = total;
    } else high = total;
    total = Math.ceil((low + high) / 2);
  }
  return (
    best ??
    (await filledStage(job, {
      gap,
      stream: "fill",
      effort: EVENLY,
      entries: apportion(1, job.shares),
      done: 0.5,
    }))
  );
}

interface Packed {
  readonly stage: Stage;
  /** Whether it was only filled. */
  readonly quick: boolean;
}

/** As many motifs as fit easily at `gap` µm with the shares kept. */
export async function packEvenly(job: Job, gap: number): Promise<Stage> {
  const { stage, quick } = await packFairly(job, gap, EVENLY, GENTLY);
  if (!quick) await spreadOut(stage, job, gap);
  return stage;
}

/** As many motifs as can be pressed in at `gap` µm with the shares kept. */
export async function packTightly(job: Job, gap: number): Promise<Stage> {
  const { stage, quick } = await packFairly(job, gap, TIGHTLY, TIGHTLY.pressing!);
  if (quick && stage.board.pieces.size > 0)
    await pressInProportion(stage, job, TIGHTLY.pressing!, () => job.step(0.8));
  return stage;
}

/** As many motifs as fit easily at `gap` µm with the shares kept, pushed as far apart as they go. */
export async function packLoosely(job: Job, gap: number): Promise<Stage> {
  const { stage } = await packFairly(job, gap, LIGHTLY, GENTLY);
  await spreadOut(stage, job, gap);
  return stage;
}

async function spreadOut(stage: Stage, job: Job, gap: number): Promise<void> {
  const breathe = (): Promise<void> => job.step(SPREAD_FROM);
  await evenOut(stage, job, gap, await widen(stage, job, gap, breathe), breathe, TURNS);
}
