// A small but complete job, run the same in two engines: drawn motifs with unions and cuts, chance, a toss in a
// half-drop, imported artwork, inks in several colour spaces, an SVG and a PNG; and the other ways of tossing, which push
// motifs apart.

import { readArtwork } from "../../src/artwork.ts";
import {
  berry,
  blossom,
  buildTile,
  colorways,
  definePattern,
  halfDrop,
  layered,
  leaf,
  palette,
  planeGroup,
  rasterize,
  recipeOf,
  sprig,
  star,
  straight,
  toSvg,
  toss,
} from "../../src/index.ts";
import { crc32 } from "../../src/output/png/chunks.ts";
import { printed } from "./print-files.ts";

const boat = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32">
  <path fill="#ff822d" d="M15 2c8 5 12 12 12 18H15z"/><path fill="#433b6b" d="M3 22h26a9 8 12 01-9 8H11q-6 0-8-8z"/>
  <circle fill="#ffffff" cx="16" cy="25" r="2"/></svg>`;

const pattern = definePattern({
  name: "two-engines",
  seed: "harbour-1",
  repeat: halfDrop({ width: 44, height: 38 }),
  layout: toss({
    gap: 1.5,
    flip: true,
    motifs: [
      { motif: blossom({ size: 20, vary: 0.6, variants: 2, roles: { seed: "centre", marking: "ground" } }) },
      {
        motif: readArtwork(boat, {
          size: 16,
          roles: { "#ff822d": "petal", "#433b6b": "blade", "#ffffff": "ground" },
        }),
      },
      { motif: sprig({ roles: { leaf: "blade", stem: "vein", berry: "petal" } }), scale: [0.5, 0.8] },
      {
        motif: berry({ roles: { leaf: "blade", stem: "vein", fruit: "petal", highlight: "ground" } }),
        scale: 0.6,
      },
      { motif: star({ roles: { star: "centre" } }), scale: 0.4 },
      { motif: leaf({ length: 12, vary: 0.4 }), share: 2 },
    ],
  }),
  colorways: {
    dawn: {
      ground: "#f6ead7",
      petal: "oklch(0.65 0.17 30)",
      centre: "lab(80 10 60)",
      blade: "hsl(150 30% 30%)",
      vein: "tan",
    },
  },
});

const pushed = [
  definePattern({
    name: "layers",
    seed: "harbour-2",
    repeat: straight({ width: 27, height: 24 }),
    layout: layered({
      layouts: [
        toss({ gap: 1.5, count: 2, motifs: [{ motif: star({ size: 14 }) }] }),
        toss({
          gap: 1.5,
          density: "packed",
          motifs: [{ motif: leaf({ length: 9, roles: { vein: "ground" } }) }, { motif: star({ size: 5 }) }],
        }),
      ],
    }),
    colorways: { dawn: { ground: "#f6ead7", star: "tan", blade: "#3f6b4f" } },
  }),
  definePattern({
    name: "covered",
    seed: "harbour-3",
    repeat: planeGroup({ group: "p4", width: 30 }),
    layout: toss({ gap: 1.5, coverage: 0.3, hollows: 1, motifs: [{ motif: star({ size: 7 }) }] }),
    colorways: { dawn: { ground: "#f6ead7", star: "tan" } },
  }),
];

const quay = palette({
  name: "quay",
  gamut: "map",
  inks: Object.fromEntries(
    Array.from({ length: 6 }, (_, i) => [
      `ink-${i}`,
      `oklch(${0.25 + i * 0.12} ${0.04 + i * 0.02} ${i * 83})`,
    ]),
  ),
});

/** Everything that must not differ, as one line of text. */
export async function answer(): Promise<string> {
  const tile = await buildTile(pattern);
  const raster = await rasterize(tile, { width: 300 });
  const colorway = pattern.colorways.dawn;
  const bytes = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0) & 255);
  const png = raster.png(colorway);
  const others = [];
  for (const other of pushed) others.push(await buildTile(other));
  const planned = colorways(others[0]!, { palettes: [quay], count: 5, minContrast: 1 });
  const words = [
    `digests ${others.map((other) => other.digest).join(" ")}`,
    `digest ${tile.digest}`,
    `placements ${tile.placements.length}`,
    `figures ${JSON.stringify(tile.figures)}`,
    `png ${png.length} ${crc32(png)}`,
    `svg ${crc32(bytes(toSvg(tile, colorway)))}`,
    `plan ${JSON.stringify(planned)}`,
    `recipe ${crc32(bytes(JSON.stringify(recipeOf(pattern))))}`,
    `print ${await printed()}`,
  ];
  return words.join(", ");
}
