import { placing } from "../../geometry/matrix.ts";
import type { Pose } from "./board.ts";
import type { Job } from "./job.ts";
import type { Stage } from "./stage.ts";
import { atHome } from "./trial.ts";

/** How far an operation's cosines and sines may be from an allowed turn's to be taken for it. */
const ALIKE = 1e-6;

/**
 * A pose brought into the unit: by a translation, or else by an operation, as one of its own copies that lies there.
 * Unchanged when that copy faces a way that it may not.
 */
export function broughtHome(stage: Stage, { turns, flip: mayFlip }: Job, pose: Pose): Pose {
  const { operations, home } = stage.images;
  if (home(pose.x, pose.y)) return atHome(stage, pose);
  for (const [a, b, c, d, e, f] of operations) {
    const [x, y] = [Math.round(a * pose.x + c * pose.y + e), Math.round(b * pose.x + d * pose.y + f)];
    const way = home(x, y);
    const flip = pose.flip !== a * d - b * c < 0;
    if (!way || (flip && !mayFlip)) continue;
    const cos = (b * pose.matrix[2] + d * pose.matrix[3]) / pose.scale;
    const sin = -(a * pose.matrix[2] + c * pose.matrix[3]) / pose.scale;
    const turn = turns.cos.findIndex(
      (other, k) => Math.abs(other - cos) < ALIKE && Math.abs(turns.sin[k]! - sin) < ALIKE,
    );
    if (turn < 0) continue;
    const at = [x + way[0], y + way[1]] as const;
    return {
      ...pose,
      x: at[0],
      y: at[1],
      turn,
      flip,
      matrix: placing(...at, turns.turn[turn]!, pose.scale, flip),
    };
  }
  return pose;
}
