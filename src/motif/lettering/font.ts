import * as opentype from "opentype.js";
import { badInput, wrongType } from "../../errors/catalogue.ts";
import { SprigwrightError } from "../../errors/error.ts";
import { compositeCheck } from "./composites.ts";
import { fontFormat, LARGEST } from "./font-format.ts";
import { type Glyph, scriptOf } from "./glyph.ts";
import { type PairKerning, readPairKerning } from "./pair-kerning.ts";
import { sfntTable } from "./sfnt-table.ts";
import { sfntOfWoff } from "./woff.ts";

/** A font that was read: made by {@link loadFont}, used by `lettering`. */
export interface Font {
  /** Family name as the font gives it. */
  readonly family: string;
  /** Font units in an em. */
  readonly unitsPerEm: number;
  /** Height of capitals as a share of the em: letters at `size` 20 have capitals of `20 * capHeight` mm. */
  readonly capHeight: number;
  /** The glyph of one character; undefined when the font has none. */
  readonly glyph: (character: string) => Glyph | undefined;
  /** What to add between two glyphs, in font units: negative brings them closer. */
  readonly kerning: (left: Glyph, right: Glyph) => number;
}

/**
 * Reads a font from the bytes of a .ttf, .otf or .woff file; a WOFF2 file is unpacked first, by a decoder of yours.
 * The bytes stay with you: a recipe only ever holds the outlines of the letters that were set.
 * @throws SprigwrightError `wrong-type`, `font-format` (WOFF2, collections), `font-too-large`, `bad-font`
 */
export function loadFont(bytes: Uint8Array): Font {
  if (!(bytes instanceof Uint8Array))
    throw wrongType("font", bytes, "the bytes of a font file (a Uint8Array)");
  const format = fontFormat(bytes);
  const parse = opentype.parse ?? opentype.default?.parse;
  return orBad(() => {
    // A copy: fonts are read when letters are asked for, and the bytes are the caller's to change.
    const sfnt = format === "woff" ? sfntOfWoff(bytes, LARGEST) : new Uint8Array(bytes);
    const font = parse!(sfnt.buffer as ArrayBuffer);
    font.charToGlyph("a");
    return fontOf(font, sfnt);
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

/** Capitals of fonts that do not say how high theirs are. */
const USUAL_CAPITAL = 0.7;

function fontOf(font: opentype.Font, sfnt: Uint8Array): Font {
  const { unitsPerEm } = font;
  if (!(unitsPerEm > 0)) throw new Error("its em has no units");
  const cap = font.tables.os2?.sCapHeight ?? 0;
  const checkComposite = compositeCheck(sfnt);
  return Object.freeze({
    family: font.getEnglishName("fontFamily") ?? "unnamed",
    unitsPerEm,
    capHeight: cap > 0 && cap <= 2 * unitsPerEm ? cap / unitsPerEm : USUAL_CAPITAL,
    glyph: (character: string): Glyph | undefined =>
      orBad(() => {
        const glyph = font.charToGlyph(character);
        // Glyph 0 is the box that stands for a missing character.
        if (glyph.index === 0) return undefined;
        checkComposite(glyph.index);
        const { index, advanceWidth = 0, path } = glyph;
        return { index, script: scriptOf(character), advance: advanceWidth, commands: path.commands };
      }),
    kerning: kerningOf(font, sfnt),
  });
}

/** GPOS where the font has it for the script; else the older 'kern' table. */
function kerningOf(font: opentype.Font, sfnt: Uint8Array): Font["kerning"] {
  const gpos = sfntTable(sfnt, "GPOS");
  const scripts = new Map<string, PairKerning>();
  const read = (script: string): PairKerning => {
    const found =
      readPairKerning(gpos, [script, "DFLT", "latn"]) ??
      ((left, right) => font.kerningPairs[`${left},${right}`] ?? 0);
    scripts.set(script, found);
    return found;
  };
  return (left, right) =>
    orBad(() => (scripts.get(left.script) ?? read(left.script))(left.index, right.index));
}
