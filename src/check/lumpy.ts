import { cellAreaOf } from "../geometry/lattice.ts";
import { type CheckPiece, defineCheck } from "./check.ts";
import { hasSeats, isScattered } from "./scattered.ts";

/**
 * Most lumpiness, 0.12 + 0.6 / √n for n motifs in the unit (weighed by their ink): the fewer there are, the fewer long waves
 * there are to take the mean of. Measured: docs/figures.md.
 */
const limitFor = (motifs: number): number => 0.12 + 0.6 / Math.sqrt(motifs);

/** The ink of a tossed ground is no thicker in one place than in another. */
export const lumpy: CheckPiece = defineCheck({
  name: "sprigwright/lumpy",
  about: "The ink of a scattered ground forms no clouds and no thin patches, which show at a distance.",
  look: ({ tile }) => {
    if (!isScattered(tile) || hasSeats(tile)) return [];
    const { lumpiness, spacing } = tile.figures;
    const cell = cellAreaOf(tile.lattice) / 1e6;
    const limit = limitFor(cell / (spacing * spacing * tile.arrangement.operations.length));
    if (lumpiness <= limit) return [];
    return [
      {
        rule: "lumpy",
        severity: "warning" as const,
        measured: Math.round(lumpiness * 100) / 100,
        limit: `at most ${Math.round(limit * 100) / 100}`,
        unit: "times the lumpiness of blind chance",
        fix: "fill the thin parts and thin out the crowded ones, or try another seed or a denser toss",
      },
    ];
  },
});
