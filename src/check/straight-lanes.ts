import type { Lane } from "../tile/tile.ts";
import { type CheckPiece, defineCheck } from "./check.ts";
import type { Finding } from "./finding.ts";
import { hasSeats, isMirrored, isScattered } from "./scattered.ts";

/** Least ink in the emptiest straight band over the mean, and most that bands differ against chance. Measured: docs/figures.md. */
const GUTTER = 0.25;
const TRACKING = 0.8;

/** No straight lane runs through a tossed ground. */
export const straightLanes: CheckPiece = defineCheck({
  name: "sprigwright/straight-lanes",
  about: "No straight lane, empty or crowded, runs through a scattered ground: it shows across a room.",
  look: ({ tile }) => {
    // Tossed motifs keep off mirror lines: there is a lane along each of them by nature. Seated ones stand in rows.
    if (!isScattered(tile) || isMirrored(tile) || hasSeats(tile)) return [];
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

function way([across, down]: Lane["along"]): string {
  if (across === 0) return "straight down";
  if (down === 0) return "level";
  // The same line the other way round, so that it runs down.
  const sign = down < 0 ? -1 : 1;
  return `${Math.round(sign * across)} mm across for ${Math.round(sign * down)} mm down`;
}

const lane = (rule: string, { value, along }: Lane, limit: string, unit: string): Finding => ({
  rule,
  severity: "warning",
  measured: Math.round(value * 100) / 100,
  limit,
  unit,
  fix: `move or add motifs along the lane that runs ${way(along)}, or try another seed`,
});
