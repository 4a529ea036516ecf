import type { Lane } from "../tile/tile.ts";
import { type CheckPiece, defineCheck } from "./check.ts";
import type { Finding } from "./finding.ts";
import { isMirrored, isScattered } from "./scattered.ts";

/**
 * Least ink in the emptiest straight band over the mean, and most that bands differ against chance. Measured on 654 clean
 * tosses (eleven mixes, 4 to 317 motifs, airy to packed; straight, half-drop, p4 and p6): at least 0.32 and at most 0.53.
 */
const GUTTER = 0.25;
const TRACKING = 0.65;

/** No straight lane runs through a tossed ground. */
export const straightLanes: CheckPiece = defineCheck({
  name: "sprigwright/straight-lanes",
  about: "No straight lane, empty or crowded, runs through a scattered ground: it shows across a room.",
  look: ({ tile }) => {
    // Tossed motifs keep off mirror lines: there is a lane along each of them by nature.
    if (!isScattered(tile) || isMirrored(tile)) return [];
    const { gutter, tracking } = tile.figures;
    if (gutter.value < GUTTER)
      return [lane("gutter", gutter, `at least ${GUTTER}`, "of the mean ink in the emptiest straight band")];
    if (tracking.value > TRACKING)
      return [
        lane(
          "tracking",
          tracking,
          `at most ${TRACKING}`,
          "times as much as by chance do straight bands differ in ink",
        ),
      ];
    return [];
  },
});

const lane = (rule: string, { value, along }: Lane, limit: string, unit: string): Finding => ({
  rule,
  severity: "warning",
  measured: Math.round(value * 100) / 100,
  limit,
  unit,
  fix: `move or add motifs along the lane that runs ${Math.round(along[0])} mm across for ${Math.round(along[1])} mm down, or try another seed`,
});
