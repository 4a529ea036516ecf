import { missingInk, unknownName, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import type { Colorway } from "./colorway.ts";
import { readInk } from "./ink.ts";

/** Most colorways of one pattern. */
export const MOST_COLORWAYS = 500;

const COLORWAY_NAME = /^[a-z0-9][a-z0-9-]{0,59}$/;

/**
 * One colorway from unchecked values: an ink for every role, and for nothing else.
 * @throws SprigwrightError `missing-ink`, `unknown-role`, `bad-color`, `wrong-type`
 */
export function readColorway(
  name: unknown,
  inks: unknown,
  roles: readonly string[],
  where: string,
): Colorway {
  if (typeof name !== "string" || !COLORWAY_NAME.test(name))
    throw wrongType(where, name, 'a name in kebab-case, such as "first-light"');
  if (!isRecord(inks)) throw wrongType(where, inks, "an object that gives each role a colour");
  for (const role of Object.keys(inks))
    if (!roles.includes(role)) throw unknownName(`${where} > ${role}`, "role", role, roles);
  const missing = roles.filter((role) => !Object.hasOwn(inks, role) || inks[role] === undefined);
  if (missing.length > 0) throw missingInk(where, missing);
  const read: Record<string, string> = {};
  for (const role of roles) read[role] = readInk(inks[role], `${where} > ${role}`);
  return Object.freeze({ name, inks: Object.freeze(read) });
}

/** All colorways of a pattern, by name. */
export function readColorways(
  given: unknown,
  roles: readonly string[],
  where: string,
): Readonly<Record<string, Colorway>> {
  if (!isRecord(given)) throw wrongType(where, given, "an object of colorways by name");
  const entries = Object.entries(given);
  if (entries.length === 0 || entries.length > MOST_COLORWAYS)
    throw wrongType(where, given, `1 to ${MOST_COLORWAYS} colorways by name`);
  return Object.freeze(
    Object.fromEntries(
      entries.map(([name, inks]) => [name, readColorway(name, inks, roles, `${where} > ${name}`)]),
    ),
  );
}
