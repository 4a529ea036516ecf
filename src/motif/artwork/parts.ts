import { unknownName } from "../../errors/catalogue.ts";
import { readColor } from "./color.ts";
import type { FlatArea } from "./read.ts";

/** How a key of a role map finds areas: by their colour, or by what their element or a group around it is called. */
export interface PartKey {
  /** As it stands in the complete map: `#rrggbb`, or the key itself. */
  readonly part: string;
  readonly by: "fill" | "id" | "class" | "group";
  readonly name: string;
}

const NAMED = /^(id|class|group):(.{1,200})$/s;

/** A key of a role map. @throws SprigwrightError `unknown-fill` for what is neither a colour nor a name */
export function readPartKey(key: string, fills: readonly string[]): PartKey {
  const named = NAMED.exec(key);
  if (named) return { part: key, by: named[1] as "id" | "class" | "group", name: named[2]! };
  const fill = readColor(key)?.fill;
  if (fill === undefined) throw unknownName(`roles > ${key}`, "fill", key, fills);
  return { part: fill, by: "fill", name: fill };
}

/**
 * The part that an area belongs to: what its own id says, then a class of its own or around it, then the group
 * around it (by id or label; the innermost decides), then its colour.
 */
export function partOf({ trail, fill }: FlatArea, keys: readonly PartKey[]): string {
  const named = keys.filter((key) => key.by !== "fill");
  if (named.length === 0) return fill;
  const find = (by: PartKey["by"], holds: (name: string) => boolean): string | undefined =>
    named.find((key) => key.by === by && holds(key.name))?.part;
  const inward = [...trail].reverse();
  const own = inward[0];
  const byId = own && find("id", (name) => own.names.includes(name));
  if (byId !== undefined) return byId;
  for (const { classes } of inward) {
    const part = find("class", (name) => classes.includes(name));
    if (part !== undefined) return part;
  }
  for (const { names } of inward) {
    const part = find("group", (name) => names.includes(name)) ?? find("id", (name) => names.includes(name));
    if (part !== undefined) return part;
  }
  return fill;
}
