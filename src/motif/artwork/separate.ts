import type { Path } from "../../geometry/path.ts";
import { type CutAway, knockOut } from "./knock-out.ts";
import type { FlatArea } from "./read.ts";
import { partsOf } from "./roles.ts";
import { coatsOf, uniteMany } from "./stack.ts";

/** A drawing as layers, one a role. */
export interface Separation {
  /** Roles, back to front. */
  readonly order: readonly string[];
  readonly drawn: ReadonlyMap<string, Path>;
  /** What was cut away, and for what. */
  readonly cut: readonly CutAway[];
}

/** Separates areas into layers by a complete map of parts to roles, so that the picture does not change. */
export function separate(areas: readonly FlatArea[], roles: Readonly<Record<string, string>>): Separation {
  const { parts } = partsOf(areas, roles);
  const order = [...new Set(Object.values(roles))];
  const coats = coatsOf(
    areas.map(({ fill, path }, i) => ({ role: roles[parts[i]!] ?? roles[fill] ?? fill, path })),
  );
  const { drawn, cut } = knockOut(coats, order);
  return { order, cut, drawn: new Map([...drawn].map(([role, paths]) => [role, uniteMany(paths)])) };
}
