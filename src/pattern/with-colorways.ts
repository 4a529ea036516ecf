import type { Colorway } from "../colorway/colorway.ts";
import { readColorway } from "../colorway/read.ts";
import { badInput, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import type { Pattern } from "./pattern.ts";

/** Most colorways of one pattern. */
const MOST = 500;

/**
 * The same pattern in these colorways instead of its own, in their order: such as those that `colorways` planned.
 * To keep its own as well, put them in the list: `[...Object.values(pattern.colorways), ...planned]`.
 *
 * @example export default withColorways(garden, colorways(await buildTile(garden), { palettes }));
 * @throws SprigwrightError `same-name`, `missing-ink`, `unknown-role`, `bad-color`, `wrong-type`
 */
export function withColorways<R extends string>(
  pattern: Pattern<R>,
  colorways: readonly Colorway<NoInfer<R>>[],
): Pattern<R> {
  if (!isRecord(pattern) || !Array.isArray(pattern.roles))
    throw wrongType("withColorways > pattern", pattern, "a pattern: what definePattern returned");
  const where = `${pattern.name} > withColorways`;
  if (!Array.isArray(colorways) || colorways.length === 0 || colorways.length > MOST)
    throw wrongType(where, colorways, `a list of 1 to ${MOST} colorways`);
  const byName = new Map<string, Colorway>();
  colorways.forEach((colorway, i) => {
    if (!isRecord(colorway) || typeof colorway.name !== "string")
      throw wrongType(`${where}[${i}]`, colorway, "a colorway: a name, and inks by role");
    const { name, inks } = colorway;
    if (byName.has(name))
      throw badInput("same-name", `${where}[${i}]`, `two colorways are called "${name}"`, "rename one");
    byName.set(name, readColorway(name, inks, pattern.roles, `${where} > ${name}`));
  });
  return Object.freeze({
    ...pattern,
    colorways: Object.freeze(Object.fromEntries(byName)) as Pattern<R>["colorways"],
  });
}
