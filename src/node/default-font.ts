import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { type Font, loadFont } from "../motif/lettering/font.ts";
import type { Glyph } from "../motif/lettering/glyph.ts";

/** Hanken Grotesk, SIL Open Font License 1.1, from the npm package of that name. */
const FILES = "@fontsource/hanken-grotesk/files/hanken-grotesk";

/**
 * A sober sans-serif for sheets and calendars, installed with this library: Hanken Grotesk (SIL Open Font License 1.1),
 * with the letters of the languages of Europe that are written in Latin script.
 */
export async function defaultFont(): Promise<Font> {
  const { resolve } = createRequire(import.meta.url);
  const read = async (letters: string): Promise<Font> =>
    loadFont(new Uint8Array(await readFile(resolve(`${FILES}-${letters}-400-normal.woff`))));
  return joined(await read("latin"), await read("latin-ext"));
}

/** One font of two files of a family: web fonts are split by script. Letters of different files are not kerned. */
function joined(first: Font, second: Font): Font {
  const ofSecond = new WeakSet<Glyph>();
  return Object.freeze({
    ...first,
    glyph: (character: string): Glyph | undefined => {
      const glyph = first.glyph(character);
      if (glyph) return glyph;
      const other = second.glyph(character);
      if (other) ofSecond.add(other);
      return other;
    },
    kerning: (left: Glyph, right: Glyph): number => {
      const [a, b] = [ofSecond.has(left), ofSecond.has(right)];
      return a !== b ? 0 : (a ? second : first).kerning(left, right);
    },
  });
}
