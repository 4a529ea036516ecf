// Makes the pictures of docs/sheets.md from an example: npm run build && node tools/sheet-pictures.mjs.
import { mkdirSync, writeFileSync } from "node:fs";
import { PNG } from "pngjs";
import { buildTile } from "sprigwright";
import { defaultFont, loadPatterns } from "sprigwright/node";
import { calendar, colorwaySheet, lineSheet, pageToPng, strikeOffSheet } from "sprigwright/sheets";
import { indexedPng } from "./fewer-shades.mjs";

const out = "docs/pictures/sheets";
/** Dots per inch: an A4 page is 744 pixels wide. */
const DPI = 90;
/** How far colours may differ that are drawn as one, of 255. */
const APART = 9;

const [pattern] = await loadPatterns("examples/orchard-blossom.ts");
const tile = await buildTile(pattern);
const font = await defaultFont();
const colorways = Object.values(pattern.colorways);
const studio = "Hollin Quay Print Studio, The Net Loft, Hollin Quay";
const pictures = colorways.map((colorway) => ({ tile, colorway }));

const pages = {
  "strike-off": strikeOffSheet({ tile, colorway: colorways[0], font }),
  colorways: colorwaySheet({ tile, colorways, font }),
  "line-sheet": lineSheet({ tile, colorways, font, studio }),
  calendar: calendar({ year: 2027, pictures, font, bleed: 0 })[4],
};
mkdirSync(out, { recursive: true });
for (const [name, page] of Object.entries(pages)) {
  const png = indexedPng(PNG.sync.read(Buffer.from(await pageToPng(page, { dpi: DPI }))), APART);
  writeFileSync(`${out}/${name}.png`, png);
  console.log(`${name}: ${png.length} bytes`);
}
