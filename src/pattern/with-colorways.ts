import type { Colorway } from "../colorway/colorway.ts";
import { MOST_COLORWAYS, readColorway } from "../colorway/read.ts";
import { badInput, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import { makeReady, planOf } from "../tile/ready.ts";
import type { Tile } from "../tile/tile.ts";
import type { Pattern } from "./pattern.ts";

/**
 * The same pattern in these colorways instead of its own, in their order: such as those that `colorways` planned. Given the
 * tile, as `buildTile` returned it, it is the pattern of that tile, which is then not laid out a second time.
 * To keep its own as well, put them in the list: `[...Object.values(pattern.colorways), ...planned]`.
 *
 * @example const tile = await buildTile(garden);
 * export default withColorways(tile, colorways(tile, { palettes }));
 * @throws SprigwrightError `same-name`, `missing-ink`, `unknown-role`, `bad-color`, `wrong-type`
 */
export function withColorways<R extends string>(
  of: Pattern<R> | Tile<R>,
  colorways: readonly Colorway<NoInfer<R>>[],
): Pattern<R> {
  // A tile's plan is the pattern that buildTile was given.
  const pattern = ((isRecord(of) && planOf(of as Tile<R>)) || of) as Pattern<R>;
  if (!isRecord(pattern) || !Array.isArray(pattern.roles))
    throw wrongType("withColorways > of", of, "a pattern, or its tile as buildTile returned it");
  const where = `${pattern.name} > withColorways`;
  if (!Array.isArray(colorways) || colorways.length === 0 || colorways.length > MOST_COLORWAYS)
    throw wrongType(where, colorways, `a list of 1 to ${MOST_COLORWAYS} colorways`);
  const byName = new Map<string, Colorway>();
  colorways.forEach((colorway, i) => {
    if (!isRecord(colorway) || typeof colorway.name !== "string")
      throw wrongType(`${where}[${i}]`, colorway, "a colorway: a name, and inks by role");
    const { name, inks } = colorway;
    if (byName.has(name))
      throw badInput("same-name", `${where}[${i}]`, `two colorways are called "${name}"`, "rename one");
    byName.set(name, readColorway(name, inks, pattern.roles, `${where} > ${name}`));
  });
  const recolored = Object.freeze({
    ...pattern,
    colorways: Object.freeze(Object.fromEntries(byName)) as Pattern<R>["colorways"],
  });
  if (pattern !== of) makeReady(of as Tile<R>, recolored);
  return recolored;
}
