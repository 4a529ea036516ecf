import { modulo } from "../geometry/lattice.ts";
import { type CheckPiece, defineCheck } from "./check.ts";
import { type Cause, causesOf } from "./close-causes.ts";
import { closePairs } from "./close-pairs.ts";
import type { Finding } from "./finding.ts";
import { meetingPoint } from "./meeting-point.ts";

/** Most findings. */
const LISTED = 20;
/** Most ids that a finding lists. */
const NAMED = 12;

/**
 * How much nearer than promised two motifs may be (µm) before it is said: what flattening curves for measuring, and
 * rounding the points of a scaled tile, can come to. No eye sees it.
 */
const LEEWAY = 5;

/**
 * Motifs keep the gap that their layout promised. A layout itself keeps it, so what is found comes from a hand: a
 * motif moved, enlarged, swapped or added (see `adjusted`). The nearest pairs are listed, those of one motif that is too
 * near to several together, and if there are more, how many pairs there are.
 */
export const closeMotifs: CheckPiece = defineCheck({
  name: "sprigwright/close-motifs",
  about: "Motifs keep the gap that the layout promised, so that none run into each other unseen.",
  look: ({ tile }) => {
    const { gap, block } = tile;
    if (gap === undefined) return [];
    const pairs = closePairs(tile, Math.max(0, gap - LEEWAY));
    const limit = mm(gap);
    const causes = causesOf(pairs);
    const worst = causes.slice(0, LISTED).map((cause) => findingOf(cause, limit, block));
    if (causes.length <= LISTED) return worst;
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
  { cause, pairs }: Cause,
  limit: number,
  block: { readonly width: number; readonly height: number },
): Finding {
  const { first, second, distance, outlines } = pairs[0]!;
  const [x, y] = meetingPoint(...outlines(), distance);
  const at = [mm(modulo(x, block.width)), mm(modulo(y, block.height))] as const;
  const near = `near (${at[0]}, ${at[1]}) mm`;
  const both = first === second ? `"${first}" and its own copy` : `"${first}" and "${second}"`;
  const other = first === second ? "its own copy" : `"${first === cause ? second : first}"`;
  const others = new Set(pairs.flatMap((pair) => [pair.first, pair.second]));
  return {
    rule: "close-motifs",
    severity: "warning",
    motifs: cause === undefined ? [first, second] : [...new Set([cause, ...others])].slice(0, NAMED),
    at,
    measured: mm(distance),
    limit,
    unit: "mm",
    fix:
      cause === undefined
        ? `move ${both} apart ${near}, or make one of them smaller`
        : `"${cause}" is too near in ${pairs.length} places, most to ${other} ${near}: make it smaller, or move it away`,
  };
}
