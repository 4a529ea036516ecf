import type { Color } from "culori/fn";
import { wrongType } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import { parseColor, toInk } from "../ink.ts";

/** Anything with named inks: a palette, or a colorway. */
export interface Inked {
  readonly name: string;
  readonly inks: Readonly<Record<string, string>>;
}

/** The same with every ink changed: names stay, so a view of a colorway goes wherever the colorway goes. */
export function recolored<T extends Inked>(of: T, change: (color: Color) => Color, where: string): T {
  if (!isRecord(of) || !isRecord(of.inks)) throw wrongType(where, of, "a palette or a colorway");
  const inks = Object.entries(of.inks).map(([name, ink]) => {
    const color = parseColor(ink, `${where} > ${of.name} > ${name}`);
    return [name, toInk(change(color))] as const;
  });
  return Object.freeze({ ...of, inks: Object.freeze(Object.fromEntries(inks)) });
}
