import type { Size } from "../../geometry/lattice.ts";
import type { Path } from "../../geometry/path.ts";
import type { Tile } from "../../tile/tile.ts";
import { separate } from "../plates/separate.ts";

/**
 * What is seen of the ground and of each layer in a view (µm), in that order, across the edges of the block too: no two
 * share any area, and all end at the edge of the view. Curves stay curves. These are plates without a trap.
 */
export function knockOut(tile: Tile, view: Size): readonly Path[] {
  const work = separate(tile, {
    size: view,
    bleed: 0,
    ground: true,
    overprint: new Set(),
    trap: 0,
    rank: new Map(),
  });
  let state = work.next();
  while (!state.done) state = work.next();
  return state.value;
}
