import { transformOutline } from "../../geometry/outline.ts";
import type { Random } from "../../seed/random.ts";
import type { Piece, Pose } from "./board.ts";
import type { Job } from "./job.ts";
import { putBack, type Stage, setDown, takeUp } from "./stage.ts";
import { atHome, fits, poseAt } from "./trial.ts";

/** Times each piece is looked at. */
const SWEEPS = 2;
/** Poses tried for a piece. */
const TRIES = 12;
/** Farthest shift, as a share of the piece's radius; each sweep shifts half as far as the one before. */
const SHIFT = 0.5;
/** Farthest turn to either side, in steps of the free turns. */
const TWIST = 16;

/** Shifts pieces a little towards where they have more room around them, which evens out the ground between. */
export async function ease(stage: Stage, job: Job, from: number, to: number): Promise<void> {
  const random = job.random.fork("ease");
  let shift = SHIFT;
  for (let sweep = 0; sweep < SWEEPS; sweep++, shift /= 2) {
    await job.step(from + ((to - from) * sweep) / SWEEPS);
    for (const piece of [...stage.board.pieces].sort((a, b) => a.serial - b.serial))
      easePiece(stage, job, piece, shift * piece.copies[0]!.r, random);
  }
}

function easePiece(stage: Stage, job: Job, piece: Piece, shift: number, random: Random): void {
  takeUp(stage, piece);
  let best: Pose | undefined;
  let most = leastRoom(stage, piece);
  for (let k = 0; k < TRIES; k++) {
    const pose = nudged(job, piece, shift, random);
    const room = leastRoom(stage, pose);
    if (room <= most || !fits(stage, pose)) continue;
    most = room;
    best = pose;
  }
  if (!best) {
    putBack(stage, piece);
    return;
  }
  const home = atHome(stage, best);
  setDown(stage, home, transformOutline(home.body.outline, home.matrix, home.body.scratch));
}

function nudged({ turns }: Job, piece: Piece, shift: number, random: Random): Pose {
  const { body, scale, flip, matrix } = piece;
  const [a, b, c, d, e, f] = matrix;
  const x = a * body.spots[0]! + c * body.spots[1]! + e + random.between(-shift, shift);
  const y = b * body.spots[0]! + d * body.spots[1]! + f + random.between(-shift, shift);
  const count = turns.turn.length;
  const twist = count > 4 ? random.below(2 * TWIST + 1) - TWIST : 0;
  return poseAt(piece.band, body, turns, (piece.turn + twist + count) % count, scale, flip, x, y);
}

/** The least distance (µm) that any disc of a pose has from what surrounds it, by the field. */
function leastRoom({ field }: Stage, { body, matrix, scale }: Pose): number {
  const [a, b, c, d, e, f] = matrix;
  const { spots } = body;
  let least = Infinity;
  for (let i = 0; i < spots.length; i += 3) {
    const x = a * spots[i]! + c * spots[i + 1]! + e;
    const y = b * spots[i]! + d * spots[i + 1]! + f;
    const column = Math.round((x - field.left) / field.cell);
    const row = Math.round((y - field.top) / field.cell);
    if (column < 0 || row < 0 || column >= field.columns || row >= field.rows) return -Infinity;
    least = Math.min(least, field.values[row * field.columns + column]! - spots[i + 2]! * scale);
  }
  return least;
}
