import { countedStage } from "./counted.ts";
import { packTightly } from "./evenly.ts";
import { countByEntry, stillWanted } from "./held.ts";
import type { Job } from "./job.ts";
import { type Band, bandQuotas } from "./plan.ts";
import type { Stage } from "./stage.ts";

/** Most motifs. */
const MOST = 20_000;
/** Numbers that are tried: sizes drawn from a range are known only once they are drawn. */
const ATTEMPTS = 3;

/**
 * As many motifs, in the proportion of the shares, as come nearest to covering the share `coverage` of the ground, at
 * the widest gap (from `gap` µm up) at which they fit; the most that can be pressed in when that is less.
 */
export async function packCovering(job: Job, gap: number, coverage: number): Promise<Stage> {
  const { lattice, operations } = job.arrangement;
  const { a, b } = lattice;
  const ground = Math.abs(a[0] * b[1] - a[1] * b[0]) / operations.length;
  const wanted = coverage * ground - fixedArea(job);
  let count = nearestCount(job, wanted);
  let best: Stage | undefined;
  const tried = new Set<number>();
  for (let k = 0; k < ATTEMPTS && !tried.has(count); k++) {
    tried.add(count);
    const stage = await countedStage(job, gap, count);
    if (!stage) return best ?? packTightly(job, gap, 1);
    const off = (one: Stage): number => Math.abs(one.area - wanted);
    if (!best || off(stage) < off(best)) best = stage;
    const pieces = stage.board.pieces.size;
    count = Math.max(1, job.fixed.length + Math.round((pieces * wanted) / stage.area));
  }
  return best!;
}

const fixedArea = ({ fixed }: Job): number =>
  fixed.reduce((sum, { pose }) => sum + pose.body.area * pose.scale * pose.scale, 0);

/** The number whose motifs, of mean size, come nearest to an area (µm²), by halving: area grows with the number. */
function nearestCount(job: Job, area: number): number {
  let [low, high] = [job.fixed.length + 1, MOST];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (areaOf(job, middle) < area) low = middle + 1;
    else high = middle;
  }
  const below = Math.max(job.fixed.length + 1, low - 1);
  return area - areaOf(job, below) < areaOf(job, low) - area ? below : low;
}

function areaOf(job: Job, count: number): number {
  const already = countByEntry(job.fixed, job.shares.length);
  const quotas = bandQuotas(job.classes, stillWanted(count, job.shares, already));
  let sum = 0;
  for (const [band, number] of quotas) sum += number * meanArea(band);
  return sum;
}

function meanArea({ bodies, low, high }: Band): number {
  const drawn = bodies.reduce((sum, { area }) => sum + area, 0) / bodies.length;
  return (drawn * (low * low + low * high + high * high)) / 3;
}
