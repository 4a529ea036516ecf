import { modulo } from "../geometry/lattice.ts";
import { type CheckPiece, defineCheck } from "./check.ts";
import { type ClosePair, closePairs } from "./close-pairs.ts";
import type { Finding } from "./finding.ts";
import { meetingPoint } from "./meeting-point.ts";

/** Most pairs listed one by one. */
const LISTED = 20;

/**
 * How much nearer than promised two motifs may be (µm) before it is said: what flattening curves for measuring, and
 * rounding the points of a scaled tile, can come to. No eye sees it.
 */
const LEEWAY = 5;

/**
 * Motifs keep the gap that their layout promised. A layout itself keeps it, so what is found comes from a hand: a
 * motif moved, enlarged or added (see `adjusted`). The nearest pairs are listed, and if there are more, how many.
 */
export const closeMotifs: CheckPiece = defineCheck({
  name: "sprigwright/close-motifs",
  about: "Motifs keep the gap that the layout promised, so that none run into each other unseen.",
  look: ({ tile }) => {
    const { gap, block } = tile;
    if (gap === undefined) return [];
    const pairs = closePairs(tile, Math.max(0, gap - LEEWAY));
    const limit = mm(gap);
    const worst = pairs.slice(0, LISTED).map((pair) => findingOf(pair, limit, block));
    if (pairs.length <= LISTED) return worst;
    const all: Finding = {
      rule: "close-motifs",
      severity: "warning",
      measured: pairs.length,
      limit: 0,
      unit: `pairs of motifs nearer than ${limit} mm`,
      fix: `mend the ${LISTED} nearest, which are listed, and look again`,
    };
    return [...worst, all];
  },
});

const mm = (um: number): number => Math.round(um) / 1000;

function findingOf(
  { first, second, distance, outlines }: ClosePair,
  limit: number,
  block: { readonly width: number; readonly height: number },
): Finding {
  const [x, y] = meetingPoint(...outlines(), distance);
  const at = [mm(modulo(x, block.width)), mm(modulo(y, block.height))] as const;
  const both = first === second ? `"${first}" and its own copy` : `"${first}" and "${second}"`;
  return {
    rule: "close-motifs",
    severity: "warning",
    motifs: [first, second],
    at,
    measured: mm(distance),
    limit,
    unit: "mm",
    fix: `move ${both} apart near (${at[0]}, ${at[1]}) mm, or make one of them smaller`,
  };
}
