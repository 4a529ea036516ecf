import { expect, it } from "vitest";
import { crc32 } from "../../../src/output/png/chunks.ts";
import { rasterize } from "../../../src/output/png/rasterize.ts";
import { inQuickJs } from "../../in-quickjs.ts";
import { inksOf } from "./pictures.ts";
import { meadow } from "./tiles.ts";

const PIXELS = 240;

/** Two blocks and a bit each way. */
const CUT = { width: 200, height: 190 } as const;

it.each(["indexed", "truecolor"] as const)(
  "gives the same bytes, %s, in another engine: QuickJS, which has neither V8's mathematics nor any timer",
  async (color) => {
    const told = { ...meadow(90_000, 3, 5) };
    const tile = { ...told, recipe: { ...told.recipe, subject: "flowers, ".repeat(200) } };
    const raster = await rasterize(tile, { width: PIXELS, cut: CUT, color });
    const here = raster.png({ name: "Größe", inks: inksOf(tile) });

    const before = `
      import { crc32 } from "../../../src/output/png/chunks.ts";
      import { rasterize } from "../../../src/output/png/rasterize.ts";
      import { meadow } from "./tiles.ts";
      const told = { ...meadow(90_000, 3, 5) };
      const tile = { ...told, recipe: { ...told.recipe, subject: "flowers, ".repeat(200) } };
      const inks = ${JSON.stringify(inksOf(tile))};`;
    const expression = `rasterize(tile, { width: ${PIXELS}, cut: ${JSON.stringify(CUT)}, color: "${color}" })
      .then((raster) => raster.png({ name: "Größe", inks }))
      .then((png) => png.length + " " + crc32(png))`;
    const there = await inQuickJs(before, expression, import.meta.dirname);
    expect(there).toBe(`${here.length} ${crc32(here)}`);
  },
);
