// Makes the pictures of docs/repeats.md: npm run build && node tools/repeat-pictures.mjs [names].
import { mkdirSync, writeFileSync } from "node:fs";
import { Resvg } from "@resvg/resvg-js";
import { PNG } from "pngjs";
import { buildTile, rasterize, repeatDiagram, toSvg } from "sprigwright";
import { band, groupPattern, groups, left, plates, right } from "./repeat-patterns.mjs";

const out = "docs/pictures/repeats";
const only = process.argv.slice(2);
const wanted = (name) => only.length === 0 || only.includes(name);
const fonts = { sansSerifFamily: "DejaVu Sans", defaultFontFamily: "DejaVu Sans" };
const write = (name, picture) =>
  writeFileSync(`${out}/${name}.png`, PNG.sync.write(picture, { colorType: 2, deflateLevel: 9 }));
const draw = (svg, width) =>
  PNG.sync.read(new Resvg(svg, { font: fonts, fitTo: { mode: "width", value: width } }).render().asPng());

/** A piece of cloth `wide` mm across, of width x height pixels. */
async function cloth(tile, colorway, { width, height, wide }) {
  const across = wide / (tile.block.width / 1000);
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

/** Repeats whose lattice is easier seen than said. */
const diagrams = ["half-drop", "drop", "mirror", "ogee", "hexagonal"];

mkdirSync(out, { recursive: true });
for (const [name, { pattern, wide }] of Object.entries(plates)) {
  if (!wanted(name)) continue;
  const tile = await buildTile(pattern);
  write(name, await cloth(tile, pattern.colorways.cloth, { width: 1200, height: 600, wide }));
  if (diagrams.includes(name)) diagram(`${name}-diagram`, tile, pattern);
}
if (wanted("border")) await frame();
if (wanted("plane-groups")) await sheet();
if (wanted("plane-group-diagram")) {
  const pattern = groupPattern("p4gm", 0);
  diagram("plane-group-diagram", await buildTile(pattern), pattern);
}

function diagram(name, tile, pattern) {
  write(name, draw(repeatDiagram(tile, { colorway: pattern.colorways.cloth }), 720));
}

/** A table napkin: four corners, and bands that are the upper one mirrored about the mitres. */
async function frame() {
  const [edge, upperLeft, upperRight] = await Promise.all(
    [band, left, right].map((piece) => buildTile(piece)),
  );
  const inner = (tile, pattern) =>
    toSvg(tile, pattern.colorways.cloth)
      .replace(/^<svg[^>]*>|<\/svg>\n$|<title>.*<\/title>|<desc>.*<\/desc>/g, "")
      .replace(/ id="[^"]*"/g, "");
  const [w, h] = [edge.block.width / 1000, edge.block.height / 1000];
  const [n, m] = [8, 3];
  const [W, H] = [n * w + 2 * h, m * w + 2 * h];
  const use = (id, matrix) => `<use href="#${id}" transform="matrix(${matrix.join(" ")})"/>`;
  const parts = [];
  for (let i = 0; i < n; i++) {
    const x = h + i * w;
    parts.push(use("band", [1, 0, 0, 1, x, 0]), use("band", [-1, 0, 0, -1, x + w, H]));
  }
  for (let j = 0; j < m; j++) {
    const y = h + j * w;
    parts.push(use("band", [0, -1, -1, 0, W, y + w]), use("band", [0, 1, 1, 0, 0, y]));
  }
  parts.push(
    use("left", [1, 0, 0, 1, 0, 0]),
    use("right", [1, 0, 0, 1, W - h, 0]),
    use("left", [-1, 0, 0, -1, W, H]),
    use("right", [-1, 0, 0, -1, h, H]),
  );
  const clip = (id, width) => `<clipPath id="${id}-edge"><rect width="${width}" height="${h}"/></clipPath>`;
  const group = (id, body) => `<g id="${id}" clip-path="url(#${id}-edge)">${body}</g>`;
  const ground = band.colorways.cloth.inks.ground;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${W} ${H}" width="${W}" height="${H}"><defs>${clip("band", w)}${clip("left", h)}${clip("right", h)}${group("band", inner(edge, band))}${group("left", inner(upperLeft, left))}${group("right", inner(upperRight, right))}</defs><rect width="${W}" height="${H}" fill="${ground}"/>${parts.join("")}</svg>`;
  write("border", draw(svg, 1200));
  diagram("border-corner", upperRight, right);
}

/** Seventeen swatches with their symbols. */
async function sheet() {
  const [size, gutter, label, columns] = [220, 20, 34, 6];
  const names = Object.keys(groups);
  const rows = Math.ceil(names.length / columns);
  const width = columns * size + (columns + 1) * gutter;
  const height = rows * (size + label + gutter) + gutter;
  const texts = names.map((name, i) => {
    const x = gutter + (i % columns) * (size + gutter);
    const y = gutter + Math.floor(i / columns) * (size + label + gutter) + size + 23;
    return `<text x="${x}" y="${y}">${name}</text>`;
  });
  const page = draw(
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="18" fill="#2b3440"><rect width="${width}" height="${height}" fill="#fff"/>${texts.join("")}</svg>`,
    width,
  );
  for (const [i, name] of names.entries()) {
    const pattern = groupPattern(name, i);
    const swatch = await cloth(await buildTile(pattern), pattern.colorways.cloth, {
      width: size,
      height: size,
      wide: 150,
    });
    PNG.bitblt(
      swatch,
      page,
      0,
      0,
      size,
      size,
      gutter + (i % columns) * (size + gutter),
      gutter + Math.floor(i / columns) * (size + label + gutter),
    );
  }
  write("plane-groups", page);
}
