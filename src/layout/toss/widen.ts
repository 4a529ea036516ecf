import type { Job } from "./job.ts";
import { pushApart } from "./settle.ts";
import { meanDistance, type Stage } from "./stage.ts";

/** First widening, as a share of the mean distance of motifs, and the least before it is left at that. */
const FIRST = 0.06;
const LEAST = 0.002;
/** Rounds of pushing for one widening. */
const SWEEPS = 150;
/** Rounds in which those of a kind drift apart meanwhile. */
const DRIFT = 30;
/** Most widenings, the fruitless ones too. */
const MOST = 40;

/**
 * Pushes the motifs of a stage apart, from `gap` µm on as far as they go all together, which spreads the ground
 * evenly between them. Returns the gap that they came to.
 */
export async function widen(
  stage: Stage,
  job: Job,
  gap: number,
  breathe: () => Promise<void>,
): Promise<number> {
  const count = stage.board.pieces.size;
  if (count === 0) return gap;
  const spacing = meanDistance(stage.arrangement, count);
  let step = FIRST * spacing;
  let reached = gap;
  for (let k = 0; k < MOST && step >= LEAST * spacing; k++) {
    await breathe();
    const went = await pushApart(stage, job, Math.round(reached + step), SWEEPS, breathe, DRIFT);
    if (went) reached += step;
    else step /= 2;
  }
  return reached;
}
