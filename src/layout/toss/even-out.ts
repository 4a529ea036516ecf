import { distanceMap } from "./distance-map.ts";
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
/** What a gap is worth against the radius of the widest hole. */
const WORTH = 0.1;
/** Rounds of drifting and pushing towards it. */
const DRIFT = 40;
const TOWARDS = 60;

/**
 * Closes the widest holes of a stage whose motifs keep `gap` µm and could keep `reached`: again and again all are pushed
 * towards a gap that they cannot keep, which moves them from where it is narrow to where it is wide, and then as far
 * apart as they go. Kept is what leaves the least hole, and the widest gap where holes are alike.
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
  let least = widestHole(stage) - WORTH * reached;
  const turns = Math.max(FEWEST, Math.floor(WORK / count));
  for (const wider of WIDER.slice(0, Math.min(most, turns))) {
    await breathe();
    const before = inOrder(stage);
    if (!(await stir(stage, job, Math.round(reached * wider), TOWARDS, breathe, DRIFT))) continue;
    const wide = await widen(stage, job, gap, breathe);
    const now = widestHole(stage) - WORTH * wide;
    if (now < least) least = now;
    else putBack(stage, before);
  }
}

/** The most room (µm) that there is anywhere in the unit, at the points of the field, which itself knows of little room only. */
function widestHole({ field, room, board, gap, arrangement }: Stage): number {
  const { cell, left, top, columns } = field;
  const { width, height } = arrangement.unit;
  const distances = distanceMap(
    field,
    [...board.pieces].flatMap(({ copies }) => copies),
  );
  let most = 0;
  for (let row = Math.ceil(-top / cell); row * cell + top < height; row++)
    for (let column = Math.ceil(-left / cell); column * cell + left < width; column++) {
      const at = row * columns + column;
      most = Math.max(most, Math.min(distances[at]! - gap, room ? room[at]! : Infinity));
    }
  return most;
}
