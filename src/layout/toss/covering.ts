import { groundOf } from "../../geometry/lattice.ts";
import { nearestCount } from "./count-for.ts";
import { countedStage } from "./counted.ts";
import { packTightly } from "./evenly.ts";
import type { Job } from "./job.ts";
import type { Stage } from "./stage.ts";

/** Numbers that are tried: sizes drawn from a range are known only once they are drawn. */
const ATTEMPTS = 3;

/**
 * As many motifs, in the proportion of the shares, as come nearest to covering the share `coverage` of the ground, at
 * the widest gap (from `gap` µm up) at which they fit; the most that can be pressed in when that is less.
 */
export async function packCovering(job: Job, gap: number, coverage: number): Promise<Stage> {
  const wanted = coverage * groundOf(job.arrangement) - fixedArea(job);
  if (wanted <= 0) return (await countedStage(job, gap, job.fixed.length))!;
  let count = nearestCount(job, wanted);
  let best: Stage | undefined;
  const tried = new Set<number>();
  for (let k = 0; k < ATTEMPTS && !tried.has(count); k++) {
    tried.add(count);
    const stage = await countedStage(job, gap, count);
    if (!stage) return best ?? packTightly(job, gap);
    const off = (one: Stage): number => Math.abs(one.area - wanted);
    if (!best || off(stage) < off(best)) best = stage;
    const pieces = stage.board.pieces.size;
    count = Math.max(1, job.fixed.length + Math.round((pieces * wanted) / stage.area));
  }
  return best!;
}

const fixedArea = ({ fixed }: Job): number =>
  fixed.reduce((sum, { pose }) => sum + pose.body.area * pose.scale * pose.scale, 0);
