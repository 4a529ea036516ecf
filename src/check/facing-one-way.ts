import { type CheckPiece, defineCheck } from "./check.ts";
import { facesEveryWay } from "./scattered.ts";

/** A chance (Rayleigh's p) below which it is no accident. By its meaning, 1 in 10 000 clean tosses falls below it. */
const LEAST = 1e-4;

/** Motifs that are meant to face every way do so. */
export const facingOneWay: CheckPiece = defineCheck({
  name: "sprigwright/facing-one-way",
  about: "Motifs that are tossed every way do not by accident face one way, which makes cloth hard to cut.",
  look: ({ tile }) => {
    if (!facesEveryWay(tile)) return [];
    const { alike, chance } = tile.figures.facing;
    if (chance >= LEAST) return [];
    return [
      {
        rule: "facing-one-way",
        severity: "warning" as const,
        measured: Math.round(alike * 100) / 100,
        limit: "0",
        unit: "(0 every way, 1 one way) of the motifs' directions alike",
        fix: 'turn some motifs, try another seed, or say direction: "one-way" if it is meant',
      },
    ];
  },
});
