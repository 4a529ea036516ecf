import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, test } from "vitest";
import { movePath } from "../../src/geometry/matrix.ts";
import { boxOf } from "../../src/geometry/path.ts";
import { buildTile, definePattern, placeAt, rasterize, sprig } from "../../src/index.ts";
import { lettering, loadFont } from "../../src/lettering.ts";
import { repeats } from "./patterns.ts";
import { differing, readPng, rolled } from "./picture.ts";

// Lobster, OFL-1.1, from @fontsource/lobster.
const font = loadFont(
  readFileSync(
    createRequire(import.meta.url).resolve("@fontsource/lobster/files/lobster-latin-400-normal.woff"),
  ),
);

describe.each(Object.entries(repeats))("in a %s repeat", (_, repeat) => {
  test("strokes and letters three times as large as the unit cross edges and corners without a seam", async () => {
    const pattern = definePattern({
      name: "large",
      seed: "large",
      repeat,
      layout: placeAt({
        places: [
          { motif: sprig({ length: 320 }), x: 2, y: 3, turn: 0.13 },
          { motif: lettering(font, "Harbour", { size: 90 }), x: 100, y: 80, turn: -0.06 },
        ],
      }),
      colorways: { ink: { ground: "#fff", stem: "#123", leaf: "#465", berry: "#a33", letter: "#27c" } },
    });
    const tile = await buildTile(pattern);
    expect(boxOf(tile.motifs[0]!.outline).maxY - boxOf(tile.motifs[0]!.outline).minY).toBeGreaterThan(
      3 * tile.arrangement.unit.height,
    );
    const paint = async (given: typeof tile) =>
      readPng((await rasterize(given, { dpi: 90 })).png(pattern.colorways.ink));
    const { width, height } = tile.block;
    const moved = tile.layers.map(({ role, path }) => ({
      role,
      path: movePath(path, width / 2, height / 2),
    }));
    const whole = await paint(tile);
    expect(
      differing(await paint({ ...tile, layers: moved }), rolled(whole, whole.width / 2, whole.height / 2)),
    ).toBe(0);
  });
});
