import { badInput, unknownName, wrongType } from "../../errors/catalogue.ts";
import { extentOf } from "../../geometry/extent.ts";
import type { Vector } from "../../geometry/lattice.ts";
import { placing, transformPath } from "../../geometry/matrix.ts";
import type { Tile } from "../../tile/tile.ts";
import { middleOf } from "./cut.ts";

/** A point of a tile, and half the width and height of what has to be seen whole about it (µm). */
export interface Centre {
  readonly at: Vector;
  readonly reach: Vector;
}

/**
 * The middle of the repeat, or of one motif's box.
 * @throws SprigwrightError `unknown-motif-id`, `wrong-type`
 */
export function readCentre(tile: Tile, centre: unknown, where: string): Centre {
  if (centre === "repeat") return { at: middleOf(tile), reach: [0, 0] };
  if (typeof centre !== "string")
    throw wrongType(where, centre, '"repeat", or the id of a placement of the tile');
  const placement = tile.placements.find(({ id }) => id === centre);
  if (!placement)
    throw unknownName(
      where,
      "motif id",
      centre,
      tile.placements.map(({ id }) => id),
    );
  const { motif, x, y, turn, scale, flip } = placement;
  const outline = transformPath(tile.motifs[motif]!.outline, placing(x, y, turn, scale, flip));
  const [across, down] = [extentOf(outline, 0), extentOf(outline, 1)];
  return {
    at: [(across[0] + across[1]) / 2, (down[0] + down[1]) / 2],
    reach: [(across[1] - across[0]) / 2, (down[1] - down[0]) / 2],
  };
}

/**
 * Refuses a picture in which the motif at its centre reaches beyond the safe margin.
 * @throws SprigwrightError `motif-outside-safe-margin`
 */
export function checkSafe(
  { reach }: Centre,
  width: number,
  height: number,
  safe: number,
  where: string,
): void {
  if (reach[0] <= width / 2 - safe && reach[1] <= height / 2 - safe) return;
  throw badInput(
    "motif-outside-safe-margin",
    where,
    `the motif is ${Math.round(reach[0] / 500)} x ${Math.round(reach[1] / 500)} mm, and ${(width - 2 * safe) / 1000} x ${(height - 2 * safe) / 1000} mm are safe`,
    'give a larger size, a smaller safe margin, a smaller motif, or centre: "repeat"',
  );
}
