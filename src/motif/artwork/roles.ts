import { badInput, unknownName } from "../../errors/catalogue.ts";
import { readColor } from "./color.ts";
import { colorWord } from "./color-word.ts";
import { LIMITS } from "./limits.ts";
import type { FlatArea } from "./read.ts";
import { coatsOf, stackRoles } from "./stack.ts";

/** Fills of a drawing in the order in which they are first painted. */
export const fillsOf = (areas: readonly FlatArea[]): string[] => [...new Set(areas.map((area) => area.fill))];

/** Role names for fills: a word for each colour, numbered where two fills would share one. */
export function nameFills(fills: readonly string[], taken: readonly string[] = []): Record<string, string> {
  const used = new Set(taken);
  const names: Record<string, string> = {};
  for (const fill of fills) {
    const word = colorWord(fill);
    let name = word;
    for (let n = 2; used.has(name); n++) name = `${word}-${n}`;
    used.add(name);
    names[fill] = name;
  }
  return names;
}

/**
 * Roles as given, under the fills' own spelling. A colour that this drawing does not have is passed over, since one
 * map may serve a whole set of drawings; what is no colour at all is a slip.
 * @throws SprigwrightError `unknown-fill`
 */
export function rolesByFill(
  given: Readonly<Record<string, string>>,
  fills: readonly string[],
): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [key, role] of Object.entries(given)) {
    const fill = readColor(key)?.fill;
    if (fill === undefined) throw unknownName(`roles > ${key}`, "fill", key, fills);
    if (fills.includes(fill)) found[fill] = role;
  }
  return found;
}

/** A complete map of fills to roles, back to front: what a drawing's layers stack by. */
export function completeRoles(
  areas: readonly FlatArea[],
  given: Readonly<Record<string, string>>,
): Record<string, string> {
  const fills = fillsOf(areas);
  const known = rolesByFill(given, fills);
  const unnamed = fills.filter((fill) => known[fill] === undefined);
  const roleOf = { ...known, ...nameFills(unnamed, Object.values(known)) };
  const roles = new Set(Object.values(roleOf));
  if (roles.size > LIMITS.roles) throw tooManyRoles(roles.size);
  const order = stackRoles(coatsOf(areas.map(({ fill, path }) => ({ role: roleOf[fill]!, path }))));
  const stacked: Record<string, string> = {};
  for (const role of order) for (const fill of fills) if (roleOf[fill] === role) stacked[fill] = role;
  return stacked;
}

const tooManyRoles = (count: number): Error =>
  badInput(
    "too-many-roles",
    "roles",
    `the drawing has ${count} colours that would each become a role; a motif holds at most ${LIMITS.roles}`,
    "reduce its colours in the editor, or map several fills to one role",
  );
