import { begunStage } from "./begun.ts";
import { type Effort, EVENLY, LIGHTLY, TIGHTLY } from "./effort.ts";
import { evenOut } from "./even-out.ts";
import { filledStage } from "./filled.ts";
import { type Persistence, pressInProportion, takeBack } from "./in-proportion.ts";
import type { Job } from "./job.ts";
import { mix } from "./mix.ts";
import { apportion, excess } from "./shares.ts";
import type { Stage } from "./stage.ts";
import { widen } from "./widen.ts";

/** How hard motifs are pressed in where shares stand in the way of filling, and where all is to be pressed in that goes. */
const EASILY: Persistence = { misses: 4, patience: 3, sweeps: 120 };
const HARD: Persistence = { misses: 10, patience: 4, sweeps: 250 };

/** Kinds are mixed anew where this share of neighbours, or more, would be alike by chance: few kinds, or one far ahead. */
const ALIKE = 0.22;

/** Turns of evening out: a filled ground has little room for it. */
const TURNS = 1;

/** Progress at which motifs are pressed in, mixed and pushed apart. */
const PRESS_FROM = 0.35;
const MIX_FROM = 0.7;
const SPREAD_FROM = 0.8;

interface Packed {
  readonly stage: Stage;
  /** Whether it was only filled. */
  readonly quick: boolean;
}

/**
 * Filled from large to small, which is quick; if that leaves some short of their shares, begun with fewer, mixed, and more
 * pressed in in proportion.
 */
async function packFairly(job: Job, gap: number, effort: Effort, persistence: Persistence): Promise<Packed> {
  const fill = (how: Effort): Promise<Stage> =>
    filledStage(job, { gap, stream: "fill", effort: how, done: 0.1 });
  const isFair = (stage: Stage): boolean =>
    excess(stage.used, job.shares).over < 1 || takeSurplus(stage, job.shares);
  // A tight filling takes long: it is made only where a quick one shows that shares will hold.
  const filled = await fill(effort === TIGHTLY ? EVENLY : effort);
  if (isFair(filled)) {
    if (effort !== TIGHTLY) return { stage: filled, quick: true };
    const tight = await fill(TIGHTLY);
    if (isFair(tight)) return { stage: tight, quick: true };
  }
  const stage = await begunStage(job, gap, filled.area, () => job.step(0.3));
  if (!stage) return { stage: filled, quick: true };
  await press(stage, job, persistence);
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
  return total >= (1 - FEW) * all && takeBack(stage, apportion(total, shares));
}

const press = (stage: Stage, job: Job, persistence: Persistence): Promise<void> =>
  pressInProportion(stage, job, persistence, (done) => job.step(PRESS_FROM + (MIX_FROM - PRESS_FROM) * done));

/** Whether there are so few kinds that a filling alone leaves many neighbours alike. */
function hasFewKinds({ shares }: Job): boolean {
  const sum = shares.reduce((a, b) => a + b, 0);
  return shares.reduce((alike, share) => alike + (share / sum) * (share / sum), 0) >= ALIKE;
}

/** As many motifs as fit easily at `gap` µm with the shares kept. */
export async function packEvenly(job: Job, gap: number): Promise<Stage> {
  const { stage, quick } = await packFairly(job, gap, EVENLY, EASILY);
  if (!quick || hasFewKinds(job)) await mix(stage, job, () => job.step(MIX_FROM));
  if (!quick) await spreadOut(stage, job, gap);
  return stage;
}

/** As many motifs as can be pressed in at `gap` µm with the shares kept. */
export async function packTightly(job: Job, gap: number): Promise<Stage> {
  const { stage, quick } = await packFairly(job, gap, TIGHTLY, HARD);
  if (quick && stage.board.pieces.size > 0) await press(stage, job, HARD);
  if (!quick || hasFewKinds(job)) await mix(stage, job, () => job.step(MIX_FROM));
  return stage;
}

/** As many motifs as fit easily at `gap` µm with the shares kept, pushed as far apart as they go. */
export async function packLoosely(job: Job, gap: number): Promise<Stage> {
  const { stage } = await packFairly(job, gap, LIGHTLY, EASILY);
  await mix(stage, job, () => job.step(MIX_FROM));
  await spreadOut(stage, job, gap);
  return stage;
}

async function spreadOut(stage: Stage, job: Job, gap: number): Promise<void> {
  const breathe = (): Promise<void> => job.step(SPREAD_FROM);
  await evenOut(stage, job, gap, await widen(stage, job, gap, breathe), breathe, TURNS);
}
