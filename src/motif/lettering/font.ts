import * as opentype from "opentype.js";
import { badInput, wrongType } from "../../errors/catalogue.ts";
import { SprigwrightError } from "../../errors/error.ts";
import { sfntOfWoff } from "./woff.ts";

interface Point {
  readonly x: number;
  readonly y: number;
}

/** One step of a letter's outline, in font units, y upwards. */
export type OutlineStep =
  | (Point & { readonly type: "M" | "L" })
  | (Point & { readonly type: "Q"; readonly x1: number; readonly y1: number })
  | (Point & {
      readonly type: "C";
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
    })
  | { readonly type: "Z" };

/** A character's shape in a font, in font units, y upwards. */
export interface Glyph {
  readonly index: number;
  /** How far the pen moves on. */
  readonly advance: number;
  readonly commands: readonly OutlineStep[];
}

/** A font that was read: made by {@link loadFont}, used by `lettering`. */
export interface Font {
  /** Family name as the font gives it. */
  readonly family: string;
  /** Font units in an em. */
  readonly unitsPerEm: number;
  /** The glyph of one character; undefined when the font has none. */
  readonly glyph: (character: string) => Glyph | undefined;
  /** What to add between two glyphs, in font units: negative brings them closer. */
  readonly kerning: (left: Glyph, right: Glyph) => number;
}

/** Largest font file read, in bytes (20 MB: the large faces for Chinese and Japanese). */
const LARGEST = 20_000_000;

/**
 * Reads a font from the bytes of a .ttf, .otf or .woff file. The bytes stay with you: a recipe only ever holds
 * the outlines of the letters that were set.
 * @throws SprigwrightError `wrong-type`, `font-format` (WOFF2, collections), `bad-font`
 */
export function loadFont(bytes: Uint8Array): Font {
  if (!(bytes instanceof Uint8Array))
    throw wrongType("font", bytes, "the bytes of a font file (a Uint8Array)");
  refuseFormats(bytes);
  const parse = opentype.parse ?? opentype.default?.parse;
  return orBad(() => {
    const sfnt = tagOf(bytes) === "wOFF" ? sfntOfWoff(bytes, LARGEST) : bytes;
    const { buffer, byteOffset, byteLength } = sfnt;
    const font = parse!((buffer as ArrayBuffer).slice(byteOffset, byteOffset + byteLength));
    font.charToGlyph("a");
    return fontOf(font);
  });
}

/** A font's parts are read when they are asked for, so a broken one may show at any call. */
function orBad<T>(read: () => T): T {
  try {
    return read();
  } catch (cause) {
    if (cause instanceof SprigwrightError) throw cause;
    const said = cause instanceof Error ? cause.message.split("\n")[0]!.slice(0, 120) : "it cannot be parsed";
    throw badInput(
      "bad-font",
      "font",
      `the font cannot be read: ${said}`,
      "give a sound .ttf, .otf or .woff",
      cause,
    );
  }
}

function fontOf(font: opentype.Font): Font {
  const tables = font.position.getKerningTables("latn") ?? font.position.getKerningTables("DFLT") ?? [];
  return Object.freeze({
    family: font.getEnglishName("fontFamily") ?? "unnamed",
    unitsPerEm: font.unitsPerEm,
    glyph: (character: string): Glyph | undefined =>
      orBad(() => {
        const glyph = font.charToGlyph(character);
        // Glyph 0 is the box that stands for a missing character.
        if (glyph.index === 0) return undefined;
        return { index: glyph.index, advance: glyph.advanceWidth ?? 0, commands: glyph.path.commands };
      }),
    kerning: (left: Glyph, right: Glyph): number =>
      orBad(() => {
        if (tables.length > 0) return font.position.getKerningValue(tables, left.index, right.index);
        return font.kerningPairs[`${left.index},${right.index}`] ?? 0;
      }),
  });
}

const tagOf = (bytes: Uint8Array): string => String.fromCharCode(...bytes.subarray(0, 4));

function refuseFormats(bytes: Uint8Array): void {
  const refuse = (code: string, what: string, fix: string): never => {
    throw badInput(code, "font", what, fix);
  };
  const tag = tagOf(bytes);
  if (bytes.length > LARGEST)
    refuse("font-too-large", `the font has ${bytes.length} bytes`, `give at most ${LARGEST}`);
  if (tag === "wOF2")
    refuse("font-format", "this is a WOFF2 font", "give the same font as .woff, .ttf or .otf");
  if (tag === "ttcf")
    refuse("font-format", "this is a collection of fonts", "give one font of it, as .ttf or .otf");
  if (!["\u0000\u0001\u0000\u0000", "OTTO", "true", "wOFF"].includes(tag))
    refuse("font-format", "these bytes are not a font", "give the bytes of a .ttf, .otf or .woff file");
}
