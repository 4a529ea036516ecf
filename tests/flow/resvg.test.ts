import { expect, test } from "vitest";
import { buildTile, rasterize, toSvg } from "../../src/index.ts";
import { meadow, repeats } from "./patterns.ts";
import { psnr, readPng, supersampled } from "./picture.ts";

// resvg (MPL-2.0, an independent SVG renderer) draws our SVG at eight times the size; averaged down, that is
// nearer to the true coverage than any renderer at size: single renders differ by 38 to 48 dB among each other.
test.each(Object.entries(repeats))(
  "a %s repeat's PNG agrees with resvg's picture of its SVG, supersampled 8 times: at least 46 dB at 900 px",
  async (_, repeat) => {
    const pattern = meadow(repeat, "judge");
    const tile = await buildTile(pattern);
    const noon = pattern.colorways["noon"]!;
    const ours = readPng((await rasterize(tile, { width: 900 })).png(noon));
    const judge = supersampled(toSvg(tile, noon), 900, 8);
    expect(psnr(ours, judge)).toBeGreaterThanOrEqual(46);
  },
);
