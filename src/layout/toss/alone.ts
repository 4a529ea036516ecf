import { transformOutline } from "../../geometry/outline.ts";
import type { Job } from "./job.ts";
import { largestStand } from "./largest.ts";
import { createStage, type Stage, setDown } from "./stage.ts";
import { poseOfStand } from "./stand.ts";
import { atHome, fits } from "./trial.ts";

/**
 * A stage with a single motif, where it has so little room that filling came upon no place: of the first class that can
 * stand, at the least of its sizes. Empty if none is found.
 */
export async function aloneStage(job: Job, gap: number): Promise<Stage> {
  const stage = createStage(job.arrangement, job.classes, job.shares.length, gap, job.terrain);
  const holding = { ...job, gap, breathe: () => job.step(0.1) };
  for (const band of job.classes.flat())
    for (const body of band.bodies) {
      const found = await largestStand(body, band.low, holding);
      if (found?.scale !== band.low) continue;
      const { turn, flip } = found.stand;
      const matrix = poseOfStand(body, found.stand, band.low, job.turns);
      const pose = { band, body, x: matrix[4], y: matrix[5], turn, scale: band.low, flip, matrix };
      if (!fits(stage, pose)) continue;
      const home = atHome(stage, pose);
      setDown(stage, home, transformOutline(body.outline, home.matrix, body.scratch));
      return stage;
    }
  return stage;
}
