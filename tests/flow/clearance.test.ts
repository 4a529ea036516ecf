import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, test } from "vitest";
import { readArtwork } from "../../src/artwork.ts";
import { berry, blossom, buildTile, definePattern, leaf, ring, sprig, star, toss } from "../../src/index.ts";
import { lettering, loadFont } from "../../src/lettering.ts";
import { smallestClearance } from "../layout/toss/clearance.ts";
import { repeats } from "./patterns.ts";

// Lobster, OFL-1.1, from @fontsource/lobster.
const require = createRequire(import.meta.url);
const font = loadFont(
  readFileSync(require.resolve("@fontsource/lobster/files/lobster-latin-400-normal.woff")),
);
const islands = readArtwork(
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20"><g fill="#1d3c57"><circle cx="5" cy="5" r="4"/><circle cx="24" cy="14" r="5"/></g></svg>',
  { size: 16, roles: { "#1d3c57": "island" } },
);

// What a user tosses: drawn motifs with several parts, letters and drawings of separate pieces; judged on the placed
// outlines by jsts.
describe.each(Object.entries(repeats))("in a %s repeat", (name, repeat) => {
  test.each([1])("primitives, letters and drawings keep the gap, seed %i", async (seed) => {
    const tile = await buildTile(
      definePattern({
        name: "clearance",
        seed: `${name}-${seed}`,
        repeat,
        layout: toss({
          gap: 1.7,
          flip: true,
          motifs: [
            { motif: blossom({ size: 22, vary: 0.6 }) },
            { motif: sprig({ length: 30, vary: 0.6 }) },
            { motif: berry({ size: 7, count: 3 }) },
            { motif: lettering(font, "iij", { size: 12 }) },
            { motif: islands },
            { motif: leaf({ length: 13 }), share: 2 },
            { motif: star({ size: 8 }), scale: [0.7, 1.2], share: 2 },
            { motif: ring({ size: 6 }), share: 2 },
          ],
        }),
        colorways: {
          ink: {
            ...{ ground: "#fff", petal: "#c33", marking: "#fcc", centre: "#fc3", seed: "#333", stem: "#363" },
            ...{
              leaf: "#393",
              berry: "#a22",
              fruit: "#a22",
              highlight: "#fff",
              letter: "#226",
              island: "#147",
            },
            ...{ blade: "#393", vein: "#dfd", star: "#fb0", ring: "#777", core: "#555" },
          },
        },
      }),
    );
    const outlines = tile.motifs.map((motif) => motif.outline);
    const { distance, between } = smallestClearance(tile.placements, outlines, tile.arrangement, 6);
    expect(distance, between).toBeGreaterThanOrEqual(1.7 - 1e-6);
    expect(distance, "some pair is near: the judge looked").toBeLessThan(6);
  });
});
