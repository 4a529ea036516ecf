import { type CheckPiece, defineCheck } from "./check.ts";
import { isScattered } from "./scattered.ts";

/**
 * How far the largest hole's radius may exceed the room between neighbours, s (1 - √ink): s the side of the square that a
 * motif has to itself, ink the share covered. More with operations, where holes open up around mirror lines and centres of
 * rotation. Measured: docs/figures.md.
 */
const LIMIT = 1.75;
const LIMIT_WITH_OPERATIONS = 2.2;

/** No hole in a tossed ground is much larger than the others. */
export const openHole: CheckPiece = defineCheck({
  name: "sprigwright/open-hole",
  about: "No hole in a scattered ground is so large that the eye finds it in every repeat.",
  look: ({ tile }) => {
    if (!isScattered(tile)) return [];
    const { largestHole, motifs, inkCoverage } = tile.figures;
    const { width, height } = tile.block;
    const room = (Math.sqrt((width * height) / motifs) / 1000) * (1 - Math.sqrt(inkCoverage));
    const limit = room * (tile.arrangement.operations.length > 1 ? LIMIT_WITH_OPERATIONS : LIMIT);
    if (largestHole.radius <= limit) return [];
    const { x, y } = largestHole;
    return [
      {
        rule: "open-hole",
        severity: "warning" as const,
        at: [x, y] as const,
        measured: Math.ceil(largestHole.radius * 10) / 10,
        limit: `at most ${Math.floor(limit * 10) / 10}`,
        unit: "mm radius of the largest hole",
        fix: `add a motif around ${Math.round(x)} mm across, ${Math.round(y)} mm down, or try another seed`,
      },
    ];
  },
});
