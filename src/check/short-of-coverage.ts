import { type CheckPiece, defineCheck } from "./check.ts";
import { coverageAsked } from "./scattered.ts";

/** How far the ink may stay behind what was asked for, as a share of that: whole motifs seldom come to it exactly. */
const SHORT = 0.1;

/** A toss that was to cover a share of the ground comes near to it. */
export const shortOfCoverage: CheckPiece = defineCheck({
  name: "sprigwright/short-of-coverage",
  about: "A toss that was to cover a share of the ground comes near to it, as far as its gap allows.",
  look: ({ tile }) => {
    const asked = coverageAsked(tile);
    const { inkCoverage } = tile.figures;
    if (asked === undefined || inkCoverage >= (1 - SHORT) * asked) return [];
    return [
      {
        rule: "short-of-coverage",
        severity: "warning" as const,
        measured: Math.round(inkCoverage * 1000) / 1000,
        limit: asked,
        unit: "of the ground covered",
        fix: "lessen the gap, add small motifs that go in between, or ask for less",
      },
    ];
  },
});
