import { badInput } from "../errors/catalogue.ts";
import { readParams } from "../params/compound.ts";
import { kebab, unique } from "../params/kebab.ts";
import { choice } from "../params/kinds.ts";
import { parseColor, toInk } from "./ink.ts";
import { type Palette, type PaletteInput, readPalette } from "./palette.ts";

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

/**
 * A palette from names as other programs write them: brought to kebab-case, numbered where there is nothing to
 * bring. What only refers to a colour that is there already is left out.
 * @throws SprigwrightError `same-name` where two names come out alike, and what `palette` throws
 */
export function foreignPalette(
  name: string,
  inks: readonly ForeignInk[],
  where: string,
  options: ForeignOptions,
): Palette {
  const { gamut } = readParams(spec, options, where);
  const hex = inks.map((ink) => toInk(parseColor(ink.color, ink.where)));
  const literal = new Set(hex.filter((_, i) => !inks[i]!.alias));
  const kept = inks.filter(({ alias }, i) => !alias || (!literal.has(hex[i]!) && hex.indexOf(hex[i]!) === i));
  const named = new Map<string, ForeignInk>();
  const taken = new Set(kept.map((ink) => kebab(ink.name)));
  for (const ink of kept) {
    const known = kebab(ink.name) || unique("ink", taken);
    const twin = named.get(known);
    if (twin)
      throw badInput(
        "same-name",
        ink.where,
        `"${twin.name}" and "${ink.name}" both become "${known}"`,
        "rename one of the two",
      );
    named.set(known, ink);
  }
  const given: PaletteInput = {
    name,
    inks: Object.fromEntries([...named].map(([known, { color }]) => [known, color])),
    gamut,
  };
  return readPalette(given, where);
}

/** JSON from outside. @throws SprigwrightError `not-json`, and `-too-large` after what it is */
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
    throw badInput("not-json", what, said, "give the text of a JSON file", cause);
  }
}
