import { badInput } from "../../errors/catalogue.ts";
import { areaOf } from "../../geometry/path.ts";
import { colorWord } from "./color-word.ts";
import { LIMITS } from "./limits.ts";
import { mergeFills } from "./merge.ts";
import { type PartKey, partOf, readPartKey } from "./parts.ts";
import type { FlatArea } from "./read.ts";
import { coatsOf, stackRoles } from "./stack.ts";

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

/** The part of every area: a name that the map of roles gives, or its colour. @throws SprigwrightError `unknown-fill` */
export function partsOf(
  areas: readonly FlatArea[],
  given: Readonly<Record<string, string>>,
): { readonly keys: readonly PartKey[]; readonly parts: readonly string[] } {
  const fills = [...new Set(areas.map((area) => area.fill))];
  const keys = Object.keys(given).map((key) => readPartKey(key, fills));
  return { keys, parts: areas.map((area) => partOf(area, keys)) };
}

/**
 * A complete map of parts to roles, back to front: what a drawing's layers stack by. What the user named keeps its
 * role; other colours join the nearest named or larger one within `merge` (ΔE00), or get a word of their own.
 * A name that this drawing does not have is passed over, since one map may serve a whole set of drawings.
 * @throws SprigwrightError `unknown-fill`, `too-many-roles`
 */
export function completeRoles(
  areas: readonly FlatArea[],
  given: Readonly<Record<string, string>>,
  merge = 0,
): Record<string, string> {
  const { keys, parts } = partsOf(areas, given);
  const known: Record<string, string> = {};
  Object.values(given).forEach((role, i) => {
    if (keys[i]!.by === "fill" || parts.includes(keys[i]!.part)) known[keys[i]!.part] = role;
  });
  const painted = new Map<string, number>();
  parts.forEach((part, i) => {
    if (part === areas[i]!.fill) painted.set(part, (painted.get(part) ?? 0) + areaOf(areas[i]!.path));
  });
  const named = Object.keys(known).filter((part) => part.startsWith("#"));
  const merged = mergeFills(
    [...painted].map(([fill, area]) => ({ fill, area })),
    merge,
    named,
  );
  const leaders = [...new Set([...painted.keys()].map((fill) => merged.get(fill)!))];
  const unnamed = leaders.filter((fill) => known[fill] === undefined);
  const names = { ...known, ...nameFills(unnamed, Object.values(known)) };
  const roleOf = (part: string): string => names[merged.get(part) ?? part]!;
  const order = [...new Set(parts)];
  const roles = new Set(order.map(roleOf));
  if (roles.size > LIMITS.roles) throw tooManyRoles(roles.size);
  const stack = stackRoles(coatsOf(areas.map(({ path }, i) => ({ role: roleOf(parts[i]!), path }))));
  const stacked: Record<string, string> = {};
  for (const role of stack) for (const part of order) if (roleOf(part) === role) stacked[part] = role;
  return stacked;
}

const tooManyRoles = (count: number): Error =>
  badInput(
    "too-many-roles",
    "roles",
    `the drawing has ${count} colours that would each become a role; a motif holds at most ${LIMITS.roles}`,
    "merge near colours, such as merge: 8, or map several fills to one role",
  );
