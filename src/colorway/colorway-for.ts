import { checkTile } from "../tile/check-tile.ts";
import type { Tile } from "../tile/tile.ts";
import type { Colorway } from "./colorway.ts";
import { readColorway } from "./read.ts";

/**
 * One more colorway for a finished tile: colour never touches geometry, so nothing is built again.
 * An ink for the ground and for every role of the pattern, and for no other; any opaque CSS colours.
 *
 * @example toSvg(tile, colorwayFor(tile, "dusk", { ground: "#2b2a33", petal: "#d8604c", leaf: "#5d7f63" }))
 * @throws SprigwrightError `missing-ink`, `unknown-role`, `bad-color`, `wrong-type`
 */
export function colorwayFor(tile: Tile, name: string, inks: Readonly<Record<string, string>>): Colorway {
  checkTile(tile, "colorwayFor > tile");
  return readColorway(name, inks, tile.recipe.roles, `${tile.name} > colorway ${name}`);
}
