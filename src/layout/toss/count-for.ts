import { groundOf } from "../../geometry/lattice.ts";
import { countByEntry, stillWanted } from "./held.ts";
import type { Job } from "./job.ts";
import { type Band, bandQuotas } from "./plan.ts";

/** Most motifs. */
const MOST = 20_000;

/** The number whose motifs, of mean size, come nearest to an area (µm²), by halving: area grows with the number. */
export function nearestCount(job: Job, area: number): number {
  let [low, high] = [job.fixed.length + 1, MOST];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (areaOf(job, middle) < area) low = middle + 1;
    else high = middle;
  }
  const below = Math.max(job.fixed.length + 1, low - 1);
  return area - areaOf(job, below) < areaOf(job, low) - area ? below : low;
}

/**
 * Whether so many of each band need more ground than there is, whatever their places: grown by half the gap, no two
 * overlap, and a shape of area A grown by r has an area of (√A + r √π)² or more (Brunn and Minkowski; from memory).
 */
export const isHopeless = (job: Job, gap: number, bands: ReadonlyMap<Band, number>): boolean =>
  leastGround(gap, bands) > groundOf(job.arrangement);

/** The least ground (µm²) that so many of each band can do with, gap and all: see {@link isHopeless}. */
export function leastGround(gap: number, bands: ReadonlyMap<Band, number>): number {
  const rim = (gap / 2) * Math.sqrt(Math.PI);
  let sum = 0;
  for (const [{ bodies, low }, number] of bands) {
    const side = low * Math.sqrt(Math.min(...bodies.map(({ area }) => area))) + rim;
    sum += number * side * side;
  }
  return sum;
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
