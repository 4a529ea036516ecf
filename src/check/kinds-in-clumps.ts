import type { Figures } from "../tile/tile.ts";
import { type CheckPiece, defineCheck } from "./check.ts";
import type { Finding } from "./finding.ts";
import { hasSeats, isScattered } from "./scattered.ts";

/**
 * By how many standard deviations the share of like neighbours may exceed what random labels give. Nearest neighbours come in
 * pairs, so the binomial variance is taken 1.6 times.
 */
const LIMIT = 3.5;
const IN_PAIRS = 1.6;

/**
 * A huddle of at least so many that is less likely than this is no accident: kinds of a toss keep apart, so their huddles are
 * as a rule as likely as can be. Measured: docs/figures.md.
 */
const MANY = 3;
const LEAST = 0.1;
/** Most ids that a finding lists. */
const LISTED = 12;

/**
 * Motifs of one kind do not huddle in a tossed ground: neither are nearest neighbours alike far too often, nor do large
 * ones lie together as they hardly would by chance.
 */
export const kindsInClumps: CheckPiece = defineCheck({
  name: "sprigwright/kinds-in-clumps",
  about: "Motifs of one kind do not huddle together in a scattered ground.",
  look: ({ tile }) => {
    if (!isScattered(tile)) return [];
    const huddle = hasSeats(tile) ? [] : huddled(tile.figures);
    return huddle.length > 0 ? huddle : paired(tile.figures, tile.placements.length);
  },
});

function huddled({ huddle: { motifs, chance } }: Figures): Finding[] {
  if (motifs.length < MANY || chance >= LEAST) return [];
  return [
    {
      rule: "kinds-in-clumps",
      severity: "warning",
      motifs: motifs.slice(0, LISTED),
      measured: motifs.length,
      limit: "fewer",
      unit: "large motifs of one kind lie together",
      fix: "swap some of them with others of like size, or try another seed",
    },
  ];
}

function paired({ neighbours: { alike, expected } }: Figures, count: number): Finding[] {
  const limit = expected + LIMIT * Math.sqrt((IN_PAIRS * expected * (1 - expected)) / count);
  if (alike <= limit) return [];
  return [
    {
      rule: "kinds-in-clumps",
      severity: "warning",
      measured: Math.round(alike * 100),
      limit: `at most ${Math.round(limit * 100)}`,
      unit: "% of motifs with one of their own kind as nearest neighbour",
      fix: "swap motifs about, or raise the toss's spread",
    },
  ];
}
