import { leastGround } from "./count-for.ts";
import { type Effort, EVENLY, LIGHTLY } from "./effort.ts";
import { filledStage } from "./filled.ts";
import type { Job } from "./job.ts";
import type { Band } from "./plan.ts";

/**
 * So many times the ground that an even filling makes use of is never to be had. The most that could be got in by any means
 * came to 0.99 to 1.25 times it (measured over 60 tosses of 50 motifs and more: discs, leaves, crescents, stars, rods, rings
 * and mixes, gaps of 0 to 4.5 mm, one way and every way, in stripes, under p4mm, p6 and p6mm; most where crescents all face
 * one way, which nest if they are pressed long enough).
 */
const NEVER = 1.6;
/** Fillings of fewer say nothing: there a single one more counts for much. */
const FEWEST = 50;

/**
 * Whether so many of each band are far more than go: a look that takes a moment, before they are tried in earnest. A count
 * that a light filling all but reaches costs no more than that filling.
 */
export async function isFarTooMany(
  job: Job,
  gap: number,
  bands: ReadonlyMap<Band, number>,
): Promise<boolean> {
  const falls = async (effort: Effort): Promise<boolean> => {
    const { board, placed } = await filledStage(job, { gap, stream: "count", effort, bands, done: 0.05 });
    return board.pieces.size >= FEWEST && shortfall(job, gap, bands, placed) > NEVER;
  };
  return (await falls(LIGHTLY)) && falls(EVENLY);
}

/** How many times the ground that is taken would be wanted: 1 when all are placed. */
function shortfall(
  { classes }: Job,
  gap: number,
  bands: ReadonlyMap<Band, number>,
  placed: ReadonlyMap<Band, number>,
): number {
  const isShort = (band: Band): boolean => placed.get(band)! < bands.get(band)!;
  // Classes after the first that is short were not begun.
  const last = classes.findIndex((sizeClass) => sizeClass.some(isShort));
  if (last < 0) return 1;
  const begun = classes.slice(0, last + 1).flat();
  const wanted = new Map(begun.map((band) => [band, bands.get(band)!]));
  return leastGround(gap, wanted) / leastGround(gap, placed);
}
