// Makes the pictures of the README and the docs from the examples: npm run build && npm run pictures.
import { mkdirSync, writeFileSync } from "node:fs";
import { PNG } from "pngjs";
import { buildTile, rasterize } from "sprigwright";
import { loadPatterns } from "sprigwright/node";
import { indexedPng } from "./fewer-shades.mjs";

const out = "docs/pictures";

/** Pixels of a piece of cloth: the block repeated until it fills width x height. */
async function cloth(tile, colorway, { width, height, across }) {
  const raster = await rasterize(tile, { width: Math.round(width / across) });
  const block = PNG.sync.read(Buffer.from(raster.png(colorway)));
  const picture = new PNG({ width, height });
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const from = ((y % block.height) * block.width + (x % block.width)) * 4;
      block.data.copy(picture.data, (y * width + x) * 4, from, from + 4);
    }
  return picture;
}

/** Pictures of one size on white, so many side by side, `gutter` pixels apart. */
function grid(pictures, across, gutter) {
  const [{ width, height }] = pictures;
  const down = Math.ceil(pictures.length / across);
  const sheet = new PNG({
    width: across * (width + gutter) - gutter,
    height: down * (height + gutter) - gutter,
    fill: true,
  });
  sheet.data.fill(255);
  for (const [i, picture] of pictures.entries()) {
    const [x, y] = [(i % across) * (width + gutter), Math.floor(i / across) * (height + gutter)];
    PNG.bitblt(picture, sheet, 0, 0, width, height, x, y);
  }
  return sheet;
}

/** Shades that differ by less than so much of 255 become one: nobody sees it, and pages load sooner. */
const APART = 8;

const write = (name, picture) => writeFileSync(`${out}/${name}.png`, indexedPng(picture, APART));

mkdirSync(out, { recursive: true });
for (const { name, across, height, swatch } of [
  { name: "orchard-blossom", across: 1.25, height: 720, swatch: 0.7 },
  { name: "harbour-fleet", across: 2, height: 720, swatch: 0.8 },
  { name: "tide-scallops", across: 8, height: 480, swatch: 4 },
  { name: "orchard-rows", across: 2, height: 560, swatch: 0.8 },
  { name: "quay-garden", across: 1.25, height: 480, swatch: 0.8 },
]) {
  const [pattern] = await loadPatterns(`examples/${name}.ts`);
  const tile = await buildTile(pattern);
  const colorways = Object.values(pattern.colorways);
  write(name, await cloth(tile, colorways[0], { width: 1200, height, across }));
  const row = Math.min(6, colorways.length);
  const width = Math.floor((1200 - 12 * (row - 1)) / row);
  const swatches = colorways.map((c) =>
    cloth(tile, c, { width, height: colorways.length > row ? 190 : 260, across: swatch * 0.6 }),
  );
  write(`${name}-colorways`, grid(await Promise.all(swatches), row, 12));
}
