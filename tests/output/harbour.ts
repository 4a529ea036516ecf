// A small tile made by hand, whose areas can be worked out on paper: buoys and flags in a harbour.
import { joinPaths } from "../../src/geometry/path.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { circle, rectangle, tileOf } from "./png/tiles.ts";

/** 50.8 x 25.4 mm: whole pixels at 150 dpi. */
export const BLOCK = { width: 50_800, height: 25_400 };

/**
 * A float over the upper left corner of the block, so that it shows at all four; one in the middle, with a flag over its right
 * side; a rope along the whole block that goes on for ever. Back to front: rope, float, flag.
 */
export const harbour: Tile = {
  ...tileOf(BLOCK, [
    { role: "rope", path: rectangle(0, 16_500, 50_800, 4000) },
    { role: "float", path: joinPaths([circle(50_000, 25_000, 4000), circle(22_000, 9000, 6000)]) },
    { role: "flag", path: rectangle(24_000, 5000, 9000, 5000) },
  ]),
  digest: "0d",
};

export const inks = { ground: "#f6ead7", rope: "#28304a", float: "#d9603c", flag: "#2f4a38" };
export const dawn = { name: "dawn", inks };
