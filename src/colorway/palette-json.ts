import { wrongType } from "../errors/catalogue.ts";
import { checkPaletteCount, parsedJson } from "./foreign.ts";
import { listPalettes, type Palette } from "./palette.ts";

const MOST_TEXT = 4_000_000;

/** Palettes as JSON text: a list of `{ "name", "inks" }`. `readPaletteJson` gives them back. */
export function toPaletteJson(palettes: Palette | readonly Palette[]): string {
  return `${JSON.stringify(listPalettes(palettes, "toPaletteJson"), null, 2)}\n`;
}

/**
 * Palettes from JSON text: one `{ "name", "inks" }`, or a list of them; inks are any CSS colours.
 * @throws SprigwrightError `bad-json`, `palettes-too-large`, `same-name`, and what `palette` throws
 */
export function readPaletteJson(text: string): readonly Palette[] {
  if (typeof text !== "string") throw wrongType("palettes", text, "the text of a JSON file");
  const parsed = parsedJson(text, "palettes", MOST_TEXT);
  const list: readonly unknown[] = Array.isArray(parsed) ? parsed : [parsed];
  if (list.length === 0) throw wrongType("palettes", list, "one palette, or a list of some");
  checkPaletteCount(list.length, "palettes");
  return listPalettes(list as readonly Palette[], "palettes");
}
