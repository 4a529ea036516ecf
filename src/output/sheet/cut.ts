import type { Colorway } from "../../colorway/colorway.ts";
import type { Vector } from "../../geometry/lattice.ts";
import { modulo } from "../../geometry/lattice.ts";
import type { Box } from "../../geometry/path.ts";
import type { Tile } from "../../tile/tile.ts";
import type { Cloth } from "./page.ts";

/** What lies in the middle of a cut, in the tile (µm): by default the middle of the block. */
export const middleOf = ({ block }: Tile): Vector => [block.width / 2, block.height / 2];

/** A cut of a pattern that fills `area` (µm), with the point `centre` of the tile in the middle of it. */
export function cut(
  tile: Tile,
  colorway: Colorway,
  area: Box,
  scale: number = 1,
  centre: Vector = middleOf(tile),
  middle: Vector = [(area.minX + area.maxX) / 2, (area.minY + area.maxY) / 2],
): Cloth {
  const at = ([0, 1] as const).map((axis) => {
    const side = (axis === 0 ? tile.block.width : tile.block.height) * scale;
    const corner = axis === 0 ? area.minX : area.minY;
    // The first block that begins in the area, or right of it when none does: the same in all areas of one size.
    return corner + Math.round(modulo(middle[axis] - corner - centre[axis] * scale, side));
  });
  return { kind: "cloth", tile, colorway, area, at: [at[0]!, at[1]!], scale };
}
