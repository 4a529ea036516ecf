// Makes the pictures of the README and the docs from the examples: npm run build && npm run pictures.
import { mkdirSync, writeFileSync } from "node:fs";
import { PNG } from "pngjs";
import { buildTile, rasterize } from "sprigwright";
import { loadPatterns } from "sprigwright/node";

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

/** Pictures side by side on white, `gutter` pixels apart. */
function strip(pictures, gutter) {
  const width = pictures.reduce((sum, p) => sum + p.width, 0) + gutter * (pictures.length - 1);
  const sheet = new PNG({ width, height: pictures[0].height, fill: true });
  sheet.data.fill(255);
  let x = 0;
  for (const picture of pictures) {
    PNG.bitblt(picture, sheet, 0, 0, picture.width, picture.height, x, 0);
    x += picture.width + gutter;
  }
  return sheet;
}

const write = (name, picture) =>
  writeFileSync(`${out}/${name}.png`, PNG.sync.write(picture, { colorType: 2, deflateLevel: 9 }));

mkdirSync(out, { recursive: true });
for (const { name, across, height, swatch } of [
  { name: "orchard-blossom", across: 1.25, height: 720, swatch: 0.7 },
  { name: "harbour-fleet", across: 2, height: 720, swatch: 0.8 },
  { name: "tide-scallops", across: 8, height: 480, swatch: 4 },
  { name: "orchard-rows", across: 2, height: 560, swatch: 0.8 },
]) {
  const [pattern] = await loadPatterns(`examples/${name}.ts`);
  const tile = await buildTile(pattern);
  const colorways = Object.values(pattern.colorways);
  write(name, await cloth(tile, colorways[0], { width: 1200, height, across }));
  const width = Math.floor((1200 - 12 * (colorways.length - 1)) / colorways.length);
  const swatches = colorways.map((c) => cloth(tile, c, { width, height: 260, across: swatch * 0.6 }));
  write(`${name}-colorways`, strip(await Promise.all(swatches), 12));
}
