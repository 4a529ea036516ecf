import { badInput } from "../errors/catalogue.ts";
import { readParams } from "../params/compound.ts";
import { kebab, unique } from "../params/kebab.ts";
import { choice } from "../params/kinds.ts";
import { parseColor, toInk } from "./ink.ts";
import { MOST_INKS, type Palette, type PaletteInput, readPalette, tooManyInks } from "./palette.ts";

/** How palettes of another program are read. */
export interface ForeignOptions {
  /** What becomes of colours outside sRGB: see {@link PaletteInput}. Default `"refuse"`. */
  readonly gamut?: "refuse" | "map";
}

const spec = {
  gamut: choice({ about: "Colours outside sRGB.", of: ["refuse", "map"], default: "refuse" }),
};

/** A colour of a file with the name that it has there. */
export interface ForeignInk {
  readonly name: string;
  /** A CSS colour. */
  readonly color: string;
  /** Whether it only refers to another colour. */
  readonly alias: boolean;
  readonly where: string;
}

/** Most palettes of one file. */
export const MOST_PALETTES = 1000;

/** @throws SprigwrightError `tokens-too-large`, and so on after what it is */
export function checkPaletteCount(count: number, what: string): void {
  if (count > MOST_PALETTES)
    throw badInput(
      `${what}-too-large`,
      what,
      `it has more than ${MOST_PALETTES} palettes`,
      "read a part of it at a time",
    );
}

/**
 * A palette from names as other programs write them: brought to kebab-case, numbered where there is nothing to
 * bring, or where `taken` has the palette's. Of several names of one colour the first is kept, one that is not an alias
 * before those that are.
 * @throws SprigwrightError `same-name` where two names come out alike, and what `palette` throws
 */
export function foreignPalette(
  called: string,
  inks: readonly ForeignInk[],
  taken: Set<string>,
  where: string,
  options: ForeignOptions,
): Palette {
  const name = unique(kebab(called) || "palette", taken);
  checkPaletteCount(taken.size, where);
  const { gamut } = readParams(spec, options, where);
  const hex = inks.map((ink) => toInk(parseColor(ink.color, ink.where)));
  const [literal, known] = [new Set(hex.filter((_, i) => !inks[i]!.alias)), new Set<string>()];
  const kept = inks.filter(
    ({ alias }, i) => !(alias && literal.has(hex[i]!)) && known.size < known.add(hex[i]!).size,
  );
  if (kept.length > MOST_INKS) throw tooManyInks(kept.length, `${where} ${name}`);
  const named = new Map<string, ForeignInk>();
  const names = new Set(kept.map((ink) => kebab(ink.name)));
  for (const ink of kept) {
    const own = kebab(ink.name) || unique("ink", names);
    const twin = named.get(own);
    if (twin)
      throw badInput(
        "same-name",
        ink.where,
        `"${twin.name}" and "${ink.name}" both become "${own}"`,
        "rename one of the two",
      );
    named.set(own, ink);
  }
  const given: PaletteInput = {
    name,
    inks: Object.fromEntries([...named].map(([own, { color }]) => [own, color])),
    gamut,
  };
  return readPalette(given, where);
}

/** JSON from outside. @throws SprigwrightError `bad-json`, and `-too-large` after what it is */
export function parsedJson(text: string, what: string, mostText: number): unknown {
  if (text.length > mostText)
    throw badInput(
      `${what}-too-large`,
      what,
      `it has more than ${mostText / 1e6} million characters`,
      "read a smaller file",
    );
  try {
    return JSON.parse(text.replace(/^\ufeff/, ""));
  } catch (cause) {
    const said = cause instanceof Error ? cause.message : "it cannot be parsed";
    throw badInput("bad-json", what, said, "give the text of a JSON file", cause);
  }
}
