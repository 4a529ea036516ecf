// Makes the picture of docs/print-files.md: npm run build && node tools/print-pictures.mjs. The cut shows plates, and how a trap overlaps.
import { mkdirSync, writeFileSync } from "node:fs";
import { Resvg } from "@resvg/resvg-js";
import { createJiti } from "jiti";
import { PNG } from "pngjs";
import { buildTile } from "sprigwright";
import { plateToSvg, separations } from "sprigwright/print";

const out = "docs/pictures/print";
mkdirSync(out, { recursive: true });
const pattern = await createJiti(import.meta.url).import("../examples/tide-scallops.ts", { default: true });
const colorway = Object.values(pattern.colorways)[0];
const tile = await buildTile(pattern);
const plates = await separations(tile, { trap: 0.4, lightToDark: colorway, bleed: 2 });

const inside = (svg) =>
  svg.replace(/^<svg[^>]*>|<\/svg>\n$|<title>.*<\/title>|<desc>.*<\/desc>| id="[^"]*"/g, "");
const side = 64.5; // mm of a plate with its marks
const sheets = plates.map(
  (plate, i) => `<g transform="translate(${17 + i * side} 17)">${inside(plateToSvg(plate))}</g>`,
);
// All inks over each other, as through glass, and a corner of that magnified: the darker bands are the trap.
const inks = plates.map(
  (plate) =>
    `<g style="mix-blend-mode:multiply" opacity=".8" fill="${colorway.inks[plate.role]}">${inside(plateToSvg({ ...plate, marks: { points: new Int32Array(0), contours: [] } }))}</g>`,
);
const zoom = `<svg x="${4 * side + 3}" y="3" width="58" height="58" viewBox="9 12 13 13"><rect x="0" y="0" width="60" height="60" fill="#fff"/><g style="isolation:isolate">${inks.join("")}</g></svg>`;
const [width, height] = [5 * side, side];
const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"><rect width="${width}" height="${height}" fill="#fff"/>${sheets.join("")}${zoom}</svg>`;
const picture = PNG.sync.read(new Resvg(svg, { fitTo: { mode: "width", value: 1500 } }).render().asPng());
writeFileSync(`${out}/plates.png`, PNG.sync.write(picture, { colorType: 2, deflateLevel: 9 }));
