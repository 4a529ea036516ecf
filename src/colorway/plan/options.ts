import { badInput, outOfRange, unknownName, wrongType } from "../../errors/catalogue.ts";
import { isRecord } from "../../params/compound.ts";
import { listPalettes, type Palette } from "../palette.ts";

/** Every ink name of any of these palettes. */
export type InkOf<P extends Palette> = P extends Palette<infer Ink> ? Ink : never;

/** Options of {@link colorways}. */
export interface ColorwaysOptions<
  R extends string = string,
  P extends readonly Palette[] = readonly Palette[],
> {
  /** Where inks come from, 1 to 50 palettes, each with at least as many inks as there are roles. */
  readonly palettes: P;
  /** How many colorways are wanted, 1 to 200; there may be fewer when the rules leave no more that are good. Default 12. */
  readonly count?: number;
  /**
   * Role → the ink (or inks) of the palettes that it may have, such as `{ ground: "chalk" }` for one ground across a
   * collection. Palettes that lack all of a role's inks are passed over.
   */
  readonly hold?: {
    readonly [K in NoInfer<R> | "ground"]?: NoInfer<InkOf<P[number]>> | readonly NoInfer<InkOf<P[number]>>[];
  };
  /**
   * `"value-order"`: what is lighter and what darker, by 7 L* or more, stays as in the pattern's first colorway, so that its
   * shading and depth survive. `"free"`, the default: any ink may go anywhere, so that dark grounds and light ones turn up alike.
   */
  readonly keep?: "value-order" | "free";
  /**
   * Least contrast (WCAG 2.2, 1..21) of a role with the ground it lies on. Default 1.15, below which `inspect` warns.
   * Raise it (1.5, 2) for prints that are seen from afar, lower it to 1 for tone on tone.
   */
  readonly minContrast?: number;
}

/** Checked and complete. */
export interface ColorwaysPlan {
  readonly palettes: readonly Palette[];
  readonly count: number;
  /** By role: the names of its inks. */
  readonly hold: ReadonlyMap<string, readonly string[]>;
  readonly keep: "value-order" | "free";
  readonly minContrast: number;
}

const KEYS = ["palettes", "count", "hold", "keep", "minContrast"];
const KEEPS = ["value-order", "free"] as const;
const PALETTES = { min: 1, max: 50 };
const COUNT = { min: 1, max: 200 };
const CONTRAST = { min: 1, max: 21 };
/** Most inks of all palettes together. */
const MOST_INKS = 600;

/** @throws SprigwrightError as {@link colorways} says */
export function readColorwaysOptions(
  options: unknown,
  roles: readonly string[],
  where: string,
): ColorwaysPlan {
  if (!isRecord(options)) throw wrongType(where, options, "an object with palettes");
  for (const key of Object.keys(options))
    if (!KEYS.includes(key)) throw unknownName(`${where} > ${key}`, "option", key, KEYS);
  const { count = 12, keep = "free", minContrast = 1.15 } = options;
  if (!Number.isInteger(count)) throw wrongType(`${where} > count`, count, "a whole number");
  inRange(count as number, COUNT, `${where} > count`);
  if (!KEEPS.includes(keep as "free")) throw unknownName(`${where} > keep`, "choice", String(keep), KEEPS);
  if (typeof minContrast !== "number" || Number.isNaN(minContrast))
    throw wrongType(`${where} > minContrast`, minContrast, "a contrast from 1 to 21");
  inRange(minContrast, CONTRAST, `${where} > minContrast`);
  const palettes = readPalettes(options["palettes"], roles, `${where} > palettes`);
  const hold = readHold(options["hold"] ?? {}, roles, palettes, `${where} > hold`);
  return { palettes, count: count as number, hold, keep: keep as "free", minContrast };
}

function inRange(value: number, range: { readonly min: number; readonly max: number }, where: string): void {
  if (value < range.min || value > range.max) throw outOfRange(where, value, range, "");
}

function readPalettes(given: unknown, roles: readonly string[], where: string): readonly Palette[] {
  if (!Array.isArray(given)) throw wrongType(where, given, "a list of palettes");
  if (given.length < PALETTES.min || given.length > PALETTES.max)
    throw badInput(
      "list-length",
      where,
      `there are ${given.length}`,
      `give ${PALETTES.min} to ${PALETTES.max} palettes`,
    );
  const palettes = listPalettes(given as readonly Palette[], where);
  palettes.forEach(({ name, inks }, i) => {
    const count = Object.keys(inks).length;
    if (count < roles.length)
      throw badInput(
        "palette-too-small",
        `${where}[${i}] ${name}`,
        `it has ${count} inks for ${roles.length} roles: ${roles.join(", ")}`,
        "give it more inks, or let motif parts share roles",
      );
  });
  const inks = palettes.reduce((sum, palette) => sum + Object.keys(palette.inks).length, 0);
  if (inks > MOST_INKS)
    throw badInput(
      "too-many-inks",
      where,
      `they hold ${inks} inks together`,
      `give at most ${MOST_INKS}: plan some palettes at a time`,
    );
  return palettes;
}

function readHold(
  given: unknown,
  roles: readonly string[],
  palettes: readonly Palette[],
  where: string,
): ReadonlyMap<string, readonly string[]> {
  if (!isRecord(given)) throw wrongType(where, given, "an object of ink names by role");
  const known = [...new Set(palettes.flatMap(({ inks }) => Object.keys(inks)))];
  const hold = new Map<string, readonly string[]>();
  for (const [role, value] of Object.entries(given)) {
    const place = `${where} > ${role}`;
    if (!roles.includes(role)) throw unknownName(place, "role", role, roles);
    if (value === undefined) continue;
    const names: readonly unknown[] = Array.isArray(value) ? value : [value];
    if (names.length === 0) throw wrongType(place, value, "the name of an ink, or a list of such names");
    for (const name of names) {
      if (typeof name !== "string") throw wrongType(place, name, "the name of an ink");
      if (!known.includes(name)) throw unknownName(place, "ink", name, known);
    }
    for (const [other, inks] of hold)
      if (inks.length === 1 && names.length === 1 && inks[0] === names[0])
        throw badInput(
          "same-ink",
          place,
          `"${inks[0]}" is held for "${other}" already`,
          "hold another ink: no two roles share one",
        );
    hold.set(role, [...new Set(names as readonly string[])]);
  }
  return hold;
}
