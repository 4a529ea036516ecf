import { badInput } from "../../errors/catalogue.ts";
import type { SprigwrightError } from "../../errors/error.ts";
import { groundOf } from "../../geometry/lattice.ts";
import type { Job } from "./job.ts";
import { createStage } from "./stage.ts";

/** Most motifs in one unit. */
const MOST = 100_000;
/**
 * Share of the ground that the motifs' circles, grown by half the gap, take at least once a toss is filled. It is certain to be
 * a quarter: where no more goes, circles twice as wide leave no point free. Equal discs set down at random come to 0.547
 * (random sequential adsorption; Feder 1980), and any filling of ours to more.
 */
const TAKEN = 0.4;

/**
 * Refuses a toss that is to be filled at `gap` µm and would all but certainly take more motifs than a unit may have: it would
 * take hours, and then be turned down.
 * @throws SprigwrightError `too-many-motifs`
 */
export function refuseOverfull(job: Job, gap: number): void {
  const { classes, shares } = job;
  let [areas, parts] = [0, 0];
  let widest = 0;
  for (const [entry, share] of shares.entries()) {
    const bands = classes.flat().filter((band) => band.entry === entry);
    const radii = bands.flatMap(({ bodies, high }) =>
      bodies.map(({ circle, extra }) => circle.r * high + (gap + extra) / 2),
    );
    const r = Math.max(...radii);
    areas += share * Math.PI * r * r;
    parts += share;
    widest = Math.max(widest, r);
  }
  const about = (TAKEN * groundOf(job.arrangement) * parts) / areas;
  if (about <= MOST) return;
  const least = about * openShare(job, gap, widest);
  if (least > MOST) throw tooMany(least);
}

const tooMany = (least: number): SprigwrightError =>
  badInput(
    "too-many-motifs",
    "toss",
    `it would take more than ${Math.floor(least / 10_000)}0 000 motifs to fill the unit, and ${MOST / 1000} 000 is the most`,
    "make the motifs or the gap larger or the repeat smaller, or give a count or a coverage",
  );

/** The share of the unit in which circles of radius `r` µm, half the gap included, find no wall and nothing that stands. */
function openShare(job: Job, gap: number, r: number): number {
  const { arrangement, classes, shares, terrain } = job;
  const { field, room } = createStage(arrangement, classes, shares.length, gap, terrain);
  if (!room) return 1;
  const { width, height } = arrangement.unit;
  const { left, top, cell, columns } = field;
  let [all, open] = [0, 0];
  for (let at = 0; at < room.length; at++) {
    const x = left + (at % columns) * cell;
    const y = top + Math.floor(at / columns) * cell;
    if (x < 0 || y < 0 || x >= width || y >= height) continue;
    all++;
    if (room[at]! >= r) open++;
  }
  return open / all;
}
