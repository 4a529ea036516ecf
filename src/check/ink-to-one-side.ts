import { cellAreaOf } from "../geometry/lattice.ts";
import type { Figures } from "../tile/tile.ts";
import { type CheckPiece, defineCheck } from "./check.ts";
import { isScattered } from "./scattered.ts";

/**
 * How many times as unevenly as by chance a role's ink may lie over 3 x 3 parts of the cell. Chance alone exceeds 1.6 once in
 * a hundred times; images under operations do not fall by chance. Measured: docs/figures.md.
 */
const LIMIT = 1.6;
const LIMIT_WITH_OPERATIONS = 2.2;
/** Fewest motifs in the unit (weighed by their ink) by which a role is judged where the repeat has operations. */
const FEWEST = 3;

type Balance = Figures["balance"][string];

/** Every role's ink is spread over the whole of a tossed ground. */
export const inkToOneSide: CheckPiece = defineCheck({
  name: "sprigwright/ink-to-one-side",
  about:
    "Every role's ink is spread over the whole of a scattered ground, so that no colour draws to one side.",
  look: ({ tile }) => {
    if (!isScattered(tile)) return [];
    const images = tile.arrangement.operations.length;
    const cell = cellAreaOf(tile.lattice) / 1e6;
    // Small motifs lie where the large ones leave room, so no role need be more even than all motifs together.
    const all = Math.sqrt(8 / (cell / (tile.figures.spacing * tile.figures.spacing)));
    const byChance = ({ chance }: Balance): number => Math.max(chance, all);
    const limit = images > 1 ? LIMIT_WITH_OPERATIONS : LIMIT;
    // Of a motif or two, all images lie where the symmetry puts them.
    const enough = ({ chance }: Balance): boolean => images === 1 || 8 / (chance * chance * images) >= FEWEST;
    return Object.entries(tile.figures.balance)
      .filter(([, balance]) => balance.variation > limit * byChance(balance) && enough(balance))
      .map(([role, balance]) => ({
        rule: "ink-to-one-side",
        severity: "warning" as const,
        role,
        measured: Math.round((balance.variation / byChance(balance)) * 100) / 100,
        limit: `at most ${limit}`,
        unit: "times as uneven as by chance",
        fix: `swap motifs so that "${role}" is found all over the repeat`,
      }));
  },
});
