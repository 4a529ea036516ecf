import type { Colorway } from "../colorway/colorway.ts";
import { missingInk, wrongType } from "../errors/catalogue.ts";
import { checkTile } from "../tile/check-tile.ts";
import type { Tile } from "../tile/tile.ts";

/**
 * The inks of the ground and of every layer, in that order.
 * @throws SprigwrightError `missing-ink` when the colorway is not for this tile, `wrong-type` for what is neither
 */
export function inksFor(tile: Tile, colorway: Colorway): readonly string[] {
  checkTile(tile, "tile");
  if (typeof colorway?.inks !== "object" || colorway.inks === null)
    throw wrongType(
      `${tile.name} > colorway`,
      colorway,
      "a colorway: one of the pattern's, or what colorwayFor(tile, name, inks) gives",
    );
  const roles = ["ground", ...tile.layers.map((layer) => layer.role)];
  const inks = colorway.inks as Readonly<Record<string, string>>;
  const missing = roles.filter((role) => !/^#[0-9a-f]{6}$/.test(inks[role] ?? ""));
  if (missing.length > 0) throw missingInk(`${tile.name} > colorway ${colorway.name}`, missing);
  return roles.map((role) => inks[role]!);
}
