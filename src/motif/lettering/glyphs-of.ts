import { badInput } from "../../errors/catalogue.ts";
import { badText, codeOf } from "./check-text.ts";
import type { Font } from "./font.ts";
import type { Glyph } from "./glyph.ts";

/** A character and its glyph. */
export interface Sign {
  readonly character: string;
  readonly glyph: Glyph;
}

/**
 * The glyphs of a checked text, line by line.
 * @throws SprigwrightError `missing-glyph` (names every character that the font lacks), `bad-lettering`
 */
export function glyphsOf(font: Font, text: string, where: string): Sign[][] {
  const missing = new Set<string>();
  let drawn = false;
  const lines = text.split("\n").map((line) =>
    [...line].flatMap((character): Sign[] => {
      // A no-break space is a space: there are no breaks but those that are written.
      const glyph = font.glyph(character === "\u00a0" ? " " : character);
      if (!glyph) missing.add(character);
      if (glyph?.commands.length) drawn = true;
      return glyph ? [{ character, glyph }] : [];
    }),
  );
  if (missing.size > 0) throw missingGlyphs(where, [...missing], font.family);
  if (!drawn)
    throw badText(where, `"${text}" has no letter that is drawn`, "give at least one letter that is drawn");
  return lines;
}

const missingGlyphs = (where: string, characters: readonly string[], family: string): Error =>
  badInput(
    "missing-glyph",
    where,
    `"${family}" has no glyph for ${characters.map((character) => `"${character}" (${codeOf(character)})`).join(", ")}`,
    `leave ${characters.length > 1 ? "them" : "it"} out, or load a font that has ${characters.length > 1 ? "them" : "it"}; web fonts are often split by script`,
  );
