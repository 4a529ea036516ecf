import type { Font } from "./font.ts";
import type { Sign } from "./glyphs-of.ts";

/** A sign and where its advance starts on the line, in ems. */
export interface Spaced extends Sign {
  readonly x: number;
  /** Its advance, in ems, without kerning and tracking. */
  readonly advance: number;
}

/** Signs in a row, by the font's advances and kerning. */
export interface Line {
  readonly signs: readonly Spaced[];
  /** From the start of the first advance to the end of the last, in ems. */
  readonly width: number;
}

/**
 * Sets one line: glyph after glyph by the font's advances and kerning, without ligatures.
 * `tracking` (in ems) is added between all glyphs, not after the last.
 */
export function setLine(font: Font, signs: readonly Sign[], tracking: number): Line {
  const spaced: Spaced[] = [];
  let units = 0;
  signs.forEach((sign, i) => {
    const before = signs[i - 1]?.glyph;
    if (before) units += font.kerning(before, sign.glyph);
    const x = units / font.unitsPerEm + tracking * i;
    spaced.push({ ...sign, x, advance: sign.glyph.advance / font.unitsPerEm });
    units += sign.glyph.advance;
  });
  return { signs: spaced, width: units / font.unitsPerEm + tracking * Math.max(0, signs.length - 1) };
}

/** The line with `more` ems added between all its glyphs. */
export const stretchLine = ({ signs, width }: Line, more: number): Line => ({
  signs: signs.map((sign, i) => ({ ...sign, x: sign.x + more * i })),
  width: width + more * Math.max(0, signs.length - 1),
});
