import { listPalettes, type Palette } from "../palette.ts";

/**
 * Palettes as CSS custom properties: a rule for each, whose class is the palette's name. `readCssColors` gives the
 * same palettes back.
 * @example toCssColors(quay) // .quay-morning {\n  --chalk: #f6ead7;\n …
 * @throws SprigwrightError `same-name` when two palettes share a name
 */
export function toCssColors(palettes: Palette | readonly Palette[]): string {
  return listPalettes(palettes, "toCssColors")
    .map(({ name, inks }) => {
      const lines = Object.entries(inks).map(([ink, hex]) => `  --${ink}: ${hex};\n`);
      return `.${name} {\n${lines.join("")}}\n`;
    })
    .join("\n");
}
