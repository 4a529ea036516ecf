import type { Job } from "./job.ts";
import { inOrder, putBack, stir } from "./settle.ts";
import type { Stage } from "./stage.ts";
import { widen } from "./widen.ts";

/** How much wider than they can keep a gap is that motifs are pushed towards, in turn. */
const WIDER: readonly number[] = [
  1.4, 1.6, 1.9, 2.3, 1.5, 1.7, 2.1, 1.3, 1.6, 1.8, 1.4, 2, 1.7, 1.5, 2.2, 1.9,
];
/** Motifs times turns at most, and the fewest turns: what many gain by it shows less. */
const WORK = 1200;
const FEWEST = 2;
/** Rounds of drifting and pushing towards it. */
const DRIFT = 40;
const TOWARDS = 60;

/**
 * Closes the widest holes of a stage whose motifs keep `gap` µm and could keep `reached`: again and again all are pushed
 * towards a gap that they cannot keep, which moves them from where it is narrow to where it is wide, and then as far
 * apart as they go. Kept is what leaves the least hole.
 */
export async function evenOut(
  stage: Stage,
  job: Job,
  gap: number,
  reached: number,
  breathe: () => Promise<void>,
  most: number = WIDER.length,
): Promise<void> {
  const count = stage.board.pieces.size;
  if (count === 0) return;
  let least = widestHole(stage);
  const turns = Math.max(FEWEST, Math.floor(WORK / count));
  for (const wider of WIDER.slice(0, Math.min(most, turns))) {
    await breathe();
    const before = inOrder(stage);
    if (!(await stir(stage, job, Math.round(reached * wider), TOWARDS, breathe, DRIFT))) continue;
    await widen(stage, job, gap, breathe);
    const hole = widestHole(stage);
    if (hole < least) least = hole;
    else putBack(stage, before);
  }
}

/** The most room (µm) that the field shows anywhere in the unit. */
function widestHole({ field, arrangement }: Stage): number {
  const { cell, left, top, columns, values } = field;
  const { width, height } = arrangement.unit;
  let most = 0;
  for (let row = Math.ceil(-top / cell); row * cell + top < height; row++)
    for (let column = Math.ceil(-left / cell); column * cell + left < width; column++)
      most = Math.max(most, values[row * columns + column]!);
  return most;
}
