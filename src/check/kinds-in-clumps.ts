import { type CheckPiece, defineCheck } from "./check.ts";
import { isScattered } from "./scattered.ts";

/**
 * By how many standard deviations the share of like neighbours may exceed what random labels give. Nearest neighbours come in
 * pairs, so the binomial variance is taken 1.6 times. Measured on 698 clean tosses (eleven mixes, 4 to 317 motifs; straight,
 * half-drop, mirror, p4 and p6): at most 3.0, mostly below 0.
 */
const LIMIT = 3.5;
const IN_PAIRS = 1.6;

/** Motifs of one kind do not huddle in a tossed ground. */
export const kindsInClumps: CheckPiece = defineCheck({
  name: "sprigwright/kinds-in-clumps",
  about: "Motifs of one kind do not huddle together in a scattered ground.",
  look: ({ tile }) => {
    if (!isScattered(tile)) return [];
    const { alike, expected } = tile.figures.neighbours;
    const limit =
      expected + LIMIT * Math.sqrt((IN_PAIRS * expected * (1 - expected)) / tile.placements.length);
    if (alike <= limit) return [];
    return [
      {
        rule: "kinds-in-clumps",
        severity: "warning" as const,
        measured: Math.round(alike * 100),
        limit: `at most ${Math.round(limit * 100)}`,
        unit: "% of motifs with one of their own kind as nearest neighbour",
        fix: "swap motifs about, or raise the toss's spread",
      },
    ];
  },
});
