import { badInput, unknownName, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import { checkTile } from "../tile/check-tile.ts";
import type { Tile } from "../tile/tile.ts";
import type { Colorway } from "./colorway.ts";
import { type Palette, readPalette } from "./palette.ts";
import { readColorway } from "./read.ts";

/** What {@link carryPalette} is given. */
export interface CarryOptions<Ink extends string = string> {
  readonly palette: Palette<Ink>;
  /** The patterns of a collection: the hero, its coordinates, its blenders. */
  readonly tiles: readonly Tile[];
  /** Role → ink, for all patterns alike: `{ ground: "chalk", leaf: "kelp" }`. A role that is called as an ink needs none. */
  readonly roles?: Readonly<Record<string, NoInfer<Ink>>>;
  /** Name of the colorways; default: the palette's. */
  readonly name?: string;
}

/**
 * One palette over the patterns of a collection: a colorway for each, in their order. Roles of one name have one ink
 * in all of them, the ground above all, so that everything cut from the collection goes together.
 *
 * @example const [hero, stripe] = carryPalette({ palette: quay, tiles: [pears, stripes], roles: { ground: "chalk", leaf: "kelp" } })
 * A colorway that was planned for one of them goes on to the others as it is, since its inks are called as its roles:
 * `palette: { name: best.name, inks: best.inks }`.
 *
 * @throws SprigwrightError `unknown-ink`, `unknown-role` for a role that no pattern has, `missing-ink` naming the pattern and
 * its roles without an ink, `wrong-type`, `unknown-option`
 */
export function carryPalette<const Ink extends string>(options: CarryOptions<Ink>): readonly Colorway[] {
  const where = "carryPalette";
  if (!isRecord(options)) throw wrongType(where, options, "an object with palette, tiles and roles");
  const known = ["palette", "tiles", "roles", "name"];
  for (const key of Object.keys(options))
    if (!known.includes(key)) throw unknownName(`${where} > ${key}`, "option", key, known);
  const { tiles, roles = {} } = options;
  const { name: called, inks } = readPalette(options.palette, `${where} > palette`);
  const name = options.name ?? called;
  if (!Array.isArray(tiles)) throw wrongType(`${where} > tiles`, tiles, "a list of tiles");
  tiles.forEach((tile: Tile, i) => void checkTile(tile, `${where} > tiles[${i}]`));
  if (!isRecord(roles)) throw wrongType(`${where} > roles`, roles, "an object: role → ink");
  const drawn = [...new Set(tiles.flatMap((tile: Tile) => tile.recipe.roles))];
  for (const [role, ink] of Object.entries(roles)) {
    if (!drawn.includes(role)) throw unknownName(`${where} > roles > ${role}`, "role", role, drawn);
    if (typeof ink !== "string" || !Object.hasOwn(inks, ink))
      throw unknownName(`${where} > roles > ${role}`, "ink", String(ink), Object.keys(inks));
  }
  const inkOf = (role: string): string | undefined => {
    const ink = Object.hasOwn(roles, role) ? (roles[role] as string) : role;
    return Object.hasOwn(inks, ink) ? inks[ink] : undefined;
  };
  return Object.freeze(
    tiles.map((tile: Tile) => {
      const place = `${where} > ${tile.name}`;
      const missing = tile.recipe.roles.filter((role) => inkOf(role) === undefined);
      if (missing.length > 0)
        throw badInput(
          "missing-ink",
          place,
          `no ink for ${missing.map((role) => `"${role}"`).join(", ")}`,
          `name one in roles for each, such as ${missing[0]}: "${Object.keys(inks)[0]}"; the palette has ${Object.keys(inks).join(", ")}`,
        );
      const given = Object.fromEntries(tile.recipe.roles.map((role) => [role, inkOf(role)]));
      return readColorway(name, given, tile.recipe.roles, place);
    }),
  );
}
