// Makes the pictures of schemes in docs/colors.md: npm run build && node tools/scheme-pictures.mjs [names].
import { mkdirSync, writeFileSync } from "node:fs";
import { PNG } from "pngjs";
import {
  blossom,
  buildTile,
  definePattern,
  leaf,
  makePalettes,
  pip,
  rasterize,
  schemes,
  straight,
  toss,
} from "sprigwright";

const out = "docs/pictures/schemes";
const only = process.argv.slice(2);
const [chip, across, down, gap] = [20, 150, 76, 14];
const roles = ["ground", "petal", "leaf", "heart", "deep", "tint"];

/** Three palettes by every scheme; harmonies start from three inks of the studio. */
const stock = ["#d9803c", "#27566b", "#8a4f7d"];
const harmonies = ["complementary", "analogous", "triad", "split", "tetrad"];
const palettesOf = (name) => {
  const seed = "hollin-quay";
  if (harmonies.includes(name))
    return stock.map((of) => makePalettes(schemes[name]({ of }), { name: "p", seed, count: 1 })[0]);
  return makePalettes(schemes[name](), { name: "p", seed, count: 3 });
};

const bloom = { petal: "petal", marking: "tint", centre: "heart", seed: "deep" };
const pattern = definePattern({
  name: "chips",
  seed: "low-tide",
  repeat: straight({ width: 60, height: 60 }),
  layout: toss({
    gap: 1.4,
    motifs: [
      { motif: blossom({ size: 22, vary: 0.5, roles: bloom }), share: 2 },
      {
        motif: blossom({ size: 14, vary: 0.5, roles: { ...bloom, petal: "tint", marking: "petal" } }),
        share: 2,
      },
      { motif: leaf({ length: 15, vary: 0.5, roles: { blade: "leaf", vein: "deep" } }), share: 4 },
      { motif: pip({ length: 4, roles: { fleck: "heart" } }), share: 3 },
    ],
  }),
  roles,
  colorways: { plain: Object.fromEntries(roles.map((role, i) => [role, `#0000${i}0`])) },
});
const raster = await rasterize(await buildTile(pattern), { width: across });

mkdirSync(out, { recursive: true });
for (const name of Object.keys(schemes)) {
  if (only.length > 0 && !only.includes(name)) continue;
  const palettes = palettesOf(name).map(({ inks }) => Object.values(inks));
  const width = roles.length * chip + across;
  const picture = new PNG({ width: 3 * width + 2 * gap, height: down });
  picture.data.fill(255);
  palettes.forEach((inks, i) => {
    const left = i * (width + gap);
    const of = Object.fromEntries(roles.map((role, r) => [role, inks[r]]));
    const cloth = PNG.sync.read(Buffer.from(raster.png({ name: "p", inks: of })));
    for (let y = 0; y < down; y++)
      for (let x = 0; x < width; x++) {
        const to = (y * picture.width + left + x) * 4;
        if (x >= roles.length * chip) {
          const from = ((y % cloth.height) * cloth.width + ((x - roles.length * chip) % cloth.width)) * 4;
          const pixel = cloth.data.subarray(from, from + 4);
          // Edges in fewer shades: the picture is half as large.
          const flat = inks.includes(`#${pixel.toString("hex", 0, 3)}`);
          picture.data.set(flat ? pixel : pixel.map((value) => Math.round(value / 17) * 17), to);
        } else {
          const value = Number.parseInt(inks[Math.floor(x / chip)].slice(1), 16);
          picture.data.set([value >> 16, (value >> 8) & 255, value & 255, 255], to);
        }
      }
  });
  writeFileSync(`${out}/${name}.png`, PNG.sync.write(picture, { colorType: 2, deflateLevel: 9 }));
}
