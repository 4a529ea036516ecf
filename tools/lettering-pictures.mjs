// Makes the pictures of docs/lettering.md from the letterings that the page shows: npm run build && node tools/lettering-pictures.mjs.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { buildTile, definePattern, placeAt, rasterize, straight, toss } from "sprigwright";
import { lettering, letterMotifs, loadFont, monogram, wordMotifs } from "sprigwright/lettering";

const out = "docs/pictures/lettering";
mkdirSync(out, { recursive: true });
const read = (family, weight) =>
  loadFont(
    readFileSync(
      new URL(
        `../node_modules/@fontsource/${family}/files/${family}-latin-${weight}-normal.woff`,
        import.meta.url,
      ),
    ),
  );
const garamond = read("eb-garamond", 700);
const roboto = read("roboto", 700);
const lobster = read("lobster", 400);
const cloth = { ground: "#f4ead8", ink: "#2f5d73", rust: "#c4553a" };

/** Draws a layout on a tile of its own, `pixels` wide. */
async function picture(name, width, height, layout, pixels, gridded = false) {
  const drawn = gridded ? layout : placeAt({ places: layout });
  const pattern = definePattern({
    name,
    seed: "hollin-quay",
    repeat: straight({ width, height }),
    layout: drawn,
    colorways: { cloth },
  });
  const tile = await buildTile(pattern);
  const raster = await rasterize(tile, { width: pixels });
  writeFileSync(`${out}/${name}.png`, raster.png(pattern.colorways.cloth));
}

const block = lettering(garamond, "FINE\nCURED\nFISH", {
  ...{ size: 20, align: "left", lineHeight: 0.95, tracking: 60, role: "ink" },
});
const sign = lettering(lobster, "to the quay", { size: 22, role: { each: "word", roles: ["ink", "rust"] } });
const wave = lettering(lobster, "out with the tide", {
  ...{ size: 17, onPath: "M0 0C30 -22 50 22 80 0S130 -22 160 0", role: "ink" },
});
await picture(
  "lines",
  270,
  84,
  [
    { motif: block, x: 50, y: 42 },
    { motif: sign, x: 178, y: 24 },
    { motif: wave, x: 178, y: 60 },
  ],
  1080,
);

const [size, radius] = [15, 46];
const above = lettering(garamond, "HOLLIN QUAY", {
  ...{ size, tracking: 100, onArc: { radius }, origin: "anchor", role: "ink" },
});
const below = lettering(garamond, "PRINT STUDIO", {
  ...{ size, tracking: 100, origin: "anchor", role: "rust" },
  onArc: { radius: radius + size * garamond.capHeight, side: "inside" },
});
const inner = monogram(garamond, "HQ", { size: 52, role: { each: "letter", roles: ["ink", "rust"] } });
await picture(
  "badge",
  130,
  130,
  [above, below, inner].map((motif) => ({ motif, x: 65, y: 65 })),
  520,
);

await picture(
  "tossed",
  130,
  90,
  toss({
    gap: 1.6,
    motifs: [
      ...letterMotifs(lobster, "Hollin Quay", { size: 26, role: "ink" }),
      ...wordMotifs(lobster, "salt tide salt", { size: 14, role: "rust" }),
    ],
  }),
  720,
  true,
);

const letters = { each: "letter", roles: ["ink", "rust"] };
await picture(
  "monograms",
  248,
  64,
  [
    monogram(garamond, "HQ", { size: 52, frame: "ring", role: letters, frameRole: "rust" }),
    monogram(garamond, "OO", { size: 52, role: letters }),
    monogram(garamond, "AQB", { size: 52, arrangement: "flanked", frame: "double-ring", role: "ink" }),
    monogram(roboto, "SO", { size: 52, frame: "lozenge", role: letters }),
  ].map((motif, i) => ({ motif, x: 31 + 62 * i, y: 32 })),
  992,
);
