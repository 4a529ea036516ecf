import { badInput, unknownName, wrongType } from "../errors/catalogue.ts";
import { isRecord } from "../params/compound.ts";
import { deltaOf } from "./delta-e.ts";
import { inSrgb, parseColor, toInk } from "./ink.ts";

/**
 * Named inks in the designer's order: what colorways are made from. Ink names are words for colours (`"shell"`,
 * `"deep-teal"`), not roles; inks are `#rrggbb`, 8-bit sRGB. Frozen, plain data.
 */
export interface Palette<Ink extends string = string> {
  readonly name: string;
  readonly inks: Readonly<Record<Ink, string>>;
}

/** What {@link palette} is given. */
export interface PaletteInput<Ink extends string = string> {
  /** In kebab-case, such as `"quay-morning"`, at most 40 characters: it names colorways and files. */
  readonly name: string;
  /** Ink names in kebab-case and opaque CSS colours, 1 to 200; their order is kept. */
  readonly inks: Readonly<Record<Ink, string>>;
  /**
   * What becomes of a colour outside sRGB: `"refuse"` (default) names it and the ink it would become; `"map"` takes that
   * ink, found by lowering OKLCH chroma after CSS Color 4, 13.2. Map what comes from a wide-gamut file.
   */
  readonly gamut?: "refuse" | "map";
}

/** Most inks of one palette. */
export const MOST_INKS = 200;

const PALETTE_NAME = /^[a-z][a-z0-9-]{0,39}$/;
const INK_NAME = /^[a-z][a-z0-9-]{0,39}$/;
const OPTIONS = ["name", "inks", "gamut"];

/**
 * A palette of named inks.
 *
 * @example palette({ name: "quay-morning", inks: { chalk: "#f6ead7", kelp: "#3f6b4f", buoy: "#d9803c" } })
 * @throws SprigwrightError `bad-color`, `out-of-gamut`, `same-ink` when two inks are one colour, `empty-palette`,
 * `too-many-inks`, `wrong-type`, `unknown-option`, `unknown-choice`
 */
export function palette<const Ink extends string>(input: PaletteInput<Ink>): Palette<Ink> {
  return readPalette(input, "palette") as Palette<Ink>;
}

/** A palette from unchecked values. */
export function readPalette(input: unknown, where: string): Palette {
  if (!isRecord(input)) throw wrongType(where, input, "an object with name and inks");
  for (const key of Object.keys(input))
    if (!OPTIONS.includes(key)) throw unknownName(`${where} > ${key}`, "option", key, OPTIONS);
  const { name, inks, gamut = "refuse" } = input;
  if (typeof name !== "string" || !PALETTE_NAME.test(name))
    throw wrongType(`${where} > name`, name, 'a name in kebab-case, such as "quay-morning"');
  if (gamut !== "refuse" && gamut !== "map")
    throw unknownName(`${where} > gamut`, "choice", String(gamut), ["refuse", "map"]);
  const place = `${where} ${name}`;
  if (!isRecord(inks)) throw wrongType(`${place} > inks`, inks, "an object of colours by ink name");
  return Object.freeze({ name, inks: readInks(inks, gamut, place) });
}

/** One palette or several, checked. @throws SprigwrightError `same-name` when two share a name */
export function listPalettes(given: Palette | readonly Palette[], where: string): readonly Palette[] {
  const list: readonly unknown[] = Array.isArray(given) ? given : [given];
  const palettes = list.map((one, i) => readPalette(one, `${where}[${i}]`));
  const names = new Set<string>();
  palettes.forEach(({ name }, i) => {
    if (names.size === names.add(name).size)
      throw badInput(
        "same-name",
        `${where}[${i}]`,
        `two palettes are called "${name}"`,
        "give each palette its own name",
      );
  });
  return Object.freeze(palettes);
}

function readInks(
  inks: Readonly<Record<string, unknown>>,
  gamut: "refuse" | "map",
  where: string,
): Readonly<Record<string, string>> {
  const names = Object.keys(inks);
  if (names.length === 0)
    throw badInput("empty-palette", `${where} > inks`, "there are no inks", "give it at least one ink");
  if (names.length > MOST_INKS) throw tooManyInks(names.length, where);
  const read: Record<string, string> = {};
  const known = new Map<string, string>();
  for (const name of names) {
    const place = `${where} > inks > ${name}`;
    if (!INK_NAME.test(name)) throw wrongType(place, name, 'an ink name in kebab-case, such as "deep-teal"');
    const ink = readPaletteInk(inks[name], gamut, place);
    const twin = known.get(ink);
    if (twin !== undefined)
      throw badInput("same-ink", place, `"${twin}" and "${name}" are both ${ink}`, "keep one of the two");
    known.set(ink, name);
    read[name] = ink;
  }
  return Object.freeze(read);
}

export const tooManyInks = (count: number, where: string): Error =>
  badInput(
    "too-many-inks",
    `${where} > inks`,
    `${count} inks are more than ${MOST_INKS}`,
    "make several palettes of it",
  );

function readPaletteInk(value: unknown, gamut: "refuse" | "map", where: string): string {
  const color = parseColor(value, where);
  const ink = toInk(color);
  if (gamut === "map" || inSrgb(color)) return ink;
  throw badInput(
    "out-of-gamut",
    where,
    `${JSON.stringify(value)} is outside sRGB, which inks are written in; the nearest ink is ${ink}, ΔE00 ${deltaOf(color, parseColor(ink, where)).toFixed(1)} away`,
    `give ${ink}, or gamut: "map" to take the nearest ink for every such colour`,
  );
}
