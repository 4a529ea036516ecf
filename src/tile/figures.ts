import type { Size } from "../geometry/lattice.ts";
import { areaOf } from "../geometry/path.ts";
import type { Figures, Layer } from "./tile.ts";

/** Counts and shares of a tile. A role's coverage is the exact area of its shapes over the block's. */
export function measure(block: Size, layers: readonly Layer[], motifs: number): Figures {
  const coverage: Record<string, number> = {};
  for (const { role, path } of layers)
    coverage[role] = Math.round((areaOf(path) / (block.width * block.height)) * 1e6) / 1e6;
  return Object.freeze({ motifs, coverage: Object.freeze(coverage) });
}
