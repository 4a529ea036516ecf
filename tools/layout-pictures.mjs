// Makes the pictures of docs/layouts.md from its snippets: npm run build && node tools/layout-pictures.mjs [names].
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import * as sprigwright from "sprigwright";
import { fewerShades } from "./fewer-shades.mjs";
import { patternsOf } from "./layout-snippets.mjs";

const { buildTile, inspect, rasterize, sayFinding } = sprigwright;
const out = "docs/pictures/layouts";
const only = process.argv.slice(2);
/** Pixels across: pictures that stand side by side are half as wide, and show two blocks down. */
const [WIDE, HALF] = [800, 560];
/** How far shades of an edge may differ that are drawn as one, of 255. */
const APART = 14;

const page = readFileSync("docs/layouts.md", "utf8");
const paired = new Set(
  [...page.matchAll(/^\|.*$/gm)].flatMap(([row]) =>
    [...row.matchAll(/layouts\/([\w-]+)\.png/g)].map((m) => m[1]),
  ),
);

/** Blocks across and down, and pixels across. */
function view(name, { width, height }) {
  if (/^(hand|held)-/.test(name)) return { across: 1, down: 2, pixels: HALF };
  if (name === "border") return { across: 4, down: 1, pixels: WIDE };
  if (name === "seats") return { across: 3, down: 2, pixels: WIDE };
  const across = width > 1.5 * height ? 2 : 3;
  return paired.has(name)
    ? { across: 1, down: 2, pixels: HALF }
    : { across, down: across === 2 ? 3 : 2, pixels: WIDE };
}

mkdirSync(out, { recursive: true });
for (const pattern of await patternsOf(page, sprigwright)) {
  const { name } = pattern;
  const shown = page.includes(`layouts/${name}.png`);
  if (!shown || (only.length > 0 && !only.includes(name))) continue;
  const tile = await buildTile(pattern);
  const { across, down, pixels } = view(name, tile.block);
  const raster = await rasterize(tile, { width: pixels, cut: { across, down } });
  const png = fewerShades(Buffer.from(raster.png(pattern.colorways.cloth)), APART);
  writeFileSync(`${out}/${name}.png`, png);
  const found = inspect(tile).findings.filter(({ rule }) => rule !== "whole-pixels");
  const { inkCoverage, motifs, lumpiness } = tile.figures;
  console.log(
    `${name}: ${motifs} motifs, coverage ${inkCoverage}, lumpiness ${lumpiness}, ${png.length} bytes`,
  );
  for (const finding of found) console.log(`  ${sayFinding(finding)}`);
}
