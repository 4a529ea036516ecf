import { wrongType } from "../errors/catalogue.ts";
import type { Tile } from "./tile.ts";

/** Refuses what is no tile, such as a pattern that was not built or a promise that was not awaited. */
export function checkTile(tile: Tile, where: string): void {
  const { layers, block } = (tile ?? {}) as Partial<Tile>;
  if (!Array.isArray(layers) || block === undefined)
    throw wrongType(where, tile, "a tile: what `await buildTile(pattern)` gives");
}
