import { badInput } from "../../errors/catalogue.ts";
import type { Font, Glyph } from "./font.ts";

/** Parts of an em in which outlines are written: a part is 0.2 µm in letters 20 mm high. */
export const PARTS_PER_EM = 100_000;

/** Scripts whose letters join, change or run leftwards, which needs more than one glyph after another. */
const SHAPED =
  /[\u0590-\u08ff\u0900-\u0dff\u0e00-\u0eff\u0f00-\u109f\u1780-\u17ff\ufb1d-\ufdff\ufe70-\ufeff]/;

/**
 * Sets one line: glyph after glyph by the font's advances and kerning, without ligatures.
 * The outlines come back as SVG path data in hundred-thousandths of an em, y downwards from the baseline.
 * @throws SprigwrightError `bad-lettering`, `missing-glyph` (names the character)
 */
export function setLine(font: Font, text: string): string {
  const where = "lettering > text";
  if (/[\r\n\u2028\u2029]/.test(text))
    throw badInput(
      "bad-lettering",
      where,
      "the text has a line break",
      "set one line; make a motif of each line",
    );
  const shaped = SHAPED.exec(text);
  if (shaped)
    throw badInput(
      "bad-lettering",
      where,
      `"${shaped[0]}" is of a script whose letters are shaped together, which is not supported`,
      "set the text as outlines in a drawing program and import it with readArtwork",
    );
  const scale = PARTS_PER_EM / font.unitsPerEm;
  const pieces: string[] = [];
  let x = 0;
  let before: Glyph | undefined;
  for (const character of text.normalize("NFC")) {
    const glyph = font.glyph(character);
    if (!glyph) throw missingGlyph(where, character, font.family);
    if (before) x += font.kerning(before, glyph);
    pieces.push(outlineOf(glyph, x, scale));
    x += glyph.advance;
    before = glyph;
  }
  const outline = pieces.join("");
  if (outline === "")
    throw badInput(
      "bad-lettering",
      where,
      `"${text}" has no letter that is drawn`,
      "give at least one letter",
    );
  return outline;
}

function outlineOf(glyph: Glyph, x: number, scale: number): string {
  const at = (px: number, py: number): string =>
    `${Math.round((px + x) * scale) + 0} ${Math.round(-py * scale) + 0}`;
  return glyph.commands
    .map((c) => {
      if (c.type === "Z") return "Z";
      if (c.type === "C") return `C${at(c.x1, c.y1)} ${at(c.x2, c.y2)} ${at(c.x, c.y)}`;
      return c.type === "Q" ? `Q${at(c.x1, c.y1)} ${at(c.x, c.y)}` : `${c.type}${at(c.x, c.y)}`;
    })
    .join("");
}

function missingGlyph(where: string, character: string, family: string): Error {
  const code = character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0");
  return badInput(
    "missing-glyph",
    where,
    `"${family}" has no glyph for "${character}" (U+${code})`,
    "leave the character out, or load a font that has it; web fonts are often split by script",
  );
}
