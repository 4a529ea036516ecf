import { wrongType } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import { badText } from "./check-text.ts";
import type { Stand } from "./stand.ts";

/** Roles that letters, words or lines fill in turn: the first, the second … and the first again. */
export interface RoleCycle<Role extends string> {
  readonly each: "letter" | "word" | "line";
  /** 1 to 16 roles. */
  readonly roles: readonly Role[];
}

/** Most roles of one lettering. */
export const MOST_PARTS = 16;

/** Whether a value is a cycle of roles. @throws SprigwrightError `wrong-type` for one that is spoilt */
export function readCycle(role: unknown, where: string): RoleCycle<string> | undefined {
  if (role === undefined || typeof role === "string") return undefined;
  const { each, roles, ...others } = isRecord(role) ? role : {};
  const sound =
    ["letter", "word", "line"].includes(each as string) &&
    Array.isArray(roles) &&
    roles.length >= 1 &&
    roles.length <= MOST_PARTS &&
    roles.every((name) => typeof name === "string") &&
    Object.keys(others).length === 0;
  if (!sound)
    throw wrongType(
      where,
      role,
      `a role's name, or { each: "letter" | "word" | "line", roles: [1 to ${MOST_PARTS} names] }`,
    );
  return role as unknown as RoleCycle<string>;
}

/**
 * Stands by role, in the order in which roles first come up.
 * @throws SprigwrightError `bad-lettering` when there are fewer letters, words or lines than roles
 */
export function byRole(
  stands: readonly Stand[],
  { each, roles }: RoleCycle<string>,
  where: string,
): Map<string, Stand[]> {
  const found = new Map<string, Stand[]>();
  let [count, fresh, line] = [-1, true, -1];
  for (const stand of stands) {
    if (stand.sign.glyph.commands.length === 0) {
      fresh = true;
      continue;
    }
    const next = { letter: true, word: fresh || stand.line !== line, line: stand.line !== line }[each];
    if (next) count++;
    [fresh, line] = [false, stand.line];
    const role = roles[count % roles.length]!;
    found.set(role, [...(found.get(role) ?? []), stand]);
  }
  if (count + 1 < roles.length)
    throw badText(
      where,
      `${roles.length} roles are given for ${count + 1} ${each}${count > 0 ? "s" : ""}`,
      `give at most ${count + 1}, so that every role is drawn`,
    );
  return found;
}
