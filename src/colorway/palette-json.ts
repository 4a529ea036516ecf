import { badInput, wrongType } from "../errors/catalogue.ts";
import { parsedJson } from "./foreign.ts";
import { listPalettes, type Palette, readPalette } from "./palette.ts";

const MOST_TEXT = 4_000_000;
/** Most palettes of one file. */
const MOST_PALETTES = 10_000;

/** Palettes as JSON text: a list of `{ "name", "inks" }`. `readPaletteJson` gives them back. */
export function toPaletteJson(palettes: Palette | readonly Palette[]): string {
  return `${JSON.stringify(listPalettes(palettes, "toPaletteJson"), null, 2)}\n`;
}

/**
 * Palettes from JSON text: one `{ "name", "inks" }`, or a list of them; inks are any CSS colours.
 * @throws SprigwrightError `not-json`, `palettes-too-large`, `same-name`, and what `palette` throws
 */
export function readPaletteJson(text: string): readonly Palette[] {
  if (typeof text !== "string") throw wrongType("palettes", text, "the text of a JSON file");
  const parsed = parsedJson(text, "palettes", MOST_TEXT);
  const list: readonly unknown[] = Array.isArray(parsed) ? parsed : [parsed];
  if (list.length === 0 || list.length > MOST_PALETTES)
    throw badInput(
      "wrong-type",
      "palettes",
      `there are ${list.length}`,
      `give 1 to ${MOST_PALETTES} of them`,
    );
  return listPalettes(
    list.map((one, i) => readPalette(one, `palettes[${i}]`)),
    "palettes",
  );
}
