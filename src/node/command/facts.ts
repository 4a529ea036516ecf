import type { Tile } from "../../tile/tile.ts";
import { count, sayMm } from "./text.ts";

/** One line of facts about a tile. */
export function factsOf(tile: Tile): string {
  const repeat = tile.recipe.repeat.use.split("/").at(-1)!;
  const size = `${sayMm(tile.block.width)} x ${sayMm(tile.block.height)} mm`;
  return `${repeat}, block ${size}, ${count(tile.figures.motifs, "motif")}, ${count(tile.layers.length + 1, "ink")}`;
}
