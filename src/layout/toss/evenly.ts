import { type Effort, EVENLY, LIGHTLY, type Pressing, TIGHTLY } from "./effort.ts";
import { evenOut } from "./even-out.ts";
import { filledStage } from "./filled.ts";
import { packInProportion } from "./in-proportion.ts";
import type { Job } from "./job.ts";
import { excess } from "./shares.ts";
import type { Stage } from "./stage.ts";
import { widen } from "./widen.ts";

/** How hard motifs are pressed in where shares stand in the way of filling: what goes easily. */
const GENTLY: Pressing = { sweeps: 60, patience: 1, batch: 1, more: 0, rest: 0 };

/** Progress at which motifs begin to be pushed apart. */
const SPREAD_FROM = 0.7;

/**
 * Filled from large to small, which is quick; if that leaves some short of their shares, pressed in in proportion, as
 * far as there is room for one of each.
 */
async function packFairly(job: Job, gap: number, effort: Effort, pressing: Pressing): Promise<Packed> {
  const filled = await filledStage(job, { gap, stream: "fill", effort, done: 0.2 });
  if (excess(filled.used, job.shares).over < 1) return { stage: filled, quick: true };
  const stage = await packInProportion(job, gap, pressing, () => job.step(0.5));
  return stage.board.pieces.size > 0 ? { stage, quick: false } : { stage: filled, quick: true };
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
  return (await packFairly(job, gap, TIGHTLY, TIGHTLY.pressing!)).stage;
}

/** As many motifs as fit easily at `gap` µm with the shares kept, pushed as far apart as they go. */
export async function packLoosely(job: Job, gap: number): Promise<Stage> {
  const { stage } = await packFairly(job, gap, LIGHTLY, GENTLY);
  await spreadOut(stage, job, gap);
  return stage;
}

async function spreadOut(stage: Stage, job: Job, gap: number): Promise<void> {
  const breathe = (): Promise<void> => job.step(SPREAD_FROM);
  await evenOut(stage, job, gap, await widen(stage, job, gap, breathe), breathe);
}
