import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type RasterizeOptions, rasterize } from "../../../src/output/png/rasterize.ts";
import type { Tile } from "../../../src/tile/tile.ts";
import { decode, inksOf, type Pixels, picture } from "./pictures.ts";
import { meadow, tileOf } from "./tiles.ts";

const tile = meadow(101_600, 3, 6); // 4 in
const inks = inksOf(tile);
const show = async (options: RasterizeOptions, of: Tile = tile): Promise<Pixels> =>
  decode((await rasterize(of, options)).png({ name: "x", inks }));

/** The first pixel of a picture that is not that of the block it is cut from. */
function stray(cut: Pixels, block: Pixels): string | undefined {
  for (let y = 0; y < cut.height; y++)
    for (let x = 0; x < cut.width; x++) {
      const at = (y * cut.width + x) * 4;
      const from = ((y % block.height) * block.width + (x % block.width)) * 4;
      for (let c = 0; c < 4; c++) if (cut.data[at + c] !== block.data[from + c]) return `${x}, ${y}`;
    }
  return undefined;
}

describe("a cut of cloth", () => {
  it.each(["indexed", "truecolor"] as const)(
    "is the block again and again, wherever it ends, in %s",
    async (color) => {
      const block = await picture(tile, 40); // 40 pixels on 4 in: 10 dpi
      const side = fc.integer({ min: 1, max: 130 });
      await fc.assert(
        fc.asyncProperty(side, side, async (w, h) => {
          const cut = { width: `${w / 10}in`, height: `${h / 10}in` } as const;
          const shown = await show({ dpi: 10, cut, color });
          expect([shown.width, shown.height]).toEqual([w, h]);
          if (color === "indexed") expect(stray(shown, block)).toBeUndefined();
          else expect(stray(shown, await show({ dpi: 10, color }))).toBeUndefined();
        }),
        {
          seed: 5,
          numRuns: 40,
          examples: [
            [1, 1],
            [41, 41],
            [42, 39],
            [43, 120],
            [80, 80],
            [40, 81],
          ],
        },
      );
    },
  );

  it("of one pixel more than blocks two pixels wide", async () => {
    for (const color of ["indexed", "truecolor"] as const) {
      const block = await show({ dpi: 1, color }, tileOf({ width: 50_800, height: 50_800 }, tile.layers));
      const of = tileOf({ width: 50_800, height: 50_800 }, tile.layers);
      const cut = { width: "5in", height: "3in" } as const;
      expect(stray(await show({ dpi: 1, cut, color }, of), block)).toBeUndefined();
    }
  });

  it("is at true size whatever it cuts through", async () => {
    const raster = await rasterize(tile, { dpi: 150, cut: { width: 1234.5, height: "2in" } });
    expect([raster.width, raster.height, raster.dpi]).toEqual([7290, 300, 150]); // 1234.5 / 25.4 · 150 = 7290.4
  });

  it("of a block wider than a match can reach back, in truecolour", async () => {
    const wide = tileOf({ width: 12_000_000, height: 20_000 }, [
      { role: "petal", path: tile.layers[2]!.path },
    ]);
    const options = { width: 24_000, color: "truecolor" } as const;
    const shown = await show({ ...options, cut: { across: 2, down: 1 } }, wide);
    expect(stray(shown, await show({ ...options, width: 12_000 }, wide))).toBeUndefined();
  });
});

describe("the unit", () => {
  it("is the upper left part of a half-drop's block, and steps down to the rest of it", async () => {
    const block = { width: 50_800, height: 25_400 };
    const arrangement = {
      unit: { width: 25_400, height: 25_400 },
      lattice: { a: [25_400, 12_700], b: [0, 25_400], block },
      operations: [[1, 0, 0, 1, 0, 0]],
    } as const;
    const half = meadow(25_400, 2, 4);
    const both = half.layers.map(({ role, path }) => ({
      role,
      path: {
        points: Int32Array.from([
          ...path.points,
          ...path.points.map((v, i) => v + (i % 2 === 0 ? 25_400 : 12_700)),
        ]),
        contours: [...path.contours, ...path.contours],
      },
    }));
    const drop: Tile = { ...tileOf(block, both), arrangement };
    const whole = await show({ dpi: 100 }, drop);
    const unit = await show({ dpi: 100, cut: "unit" }, drop);
    expect([whole.width, whole.height, unit.width, unit.height]).toEqual([200, 100, 100, 100]);
    for (let y = 0; y < 100; y++)
      for (let x = 0; x < 200; x++) {
        const down = x < 100 ? y : (y + 50) % 100; // the second column hangs half a height lower
        const from = (down * 100 + (x % 100)) * 4;
        const at = (y * 200 + x) * 4;
        expect(whole.data.subarray(at, at + 4)).toEqual(unit.data.subarray(from, from + 4));
      }
  });

  it("is refused where the block is whole pixels and the unit is not", async () => {
    const block = { width: 25_400, height: 25_400 };
    const arrangement = {
      unit: { width: 12_700, height: 25_400 },
      lattice: { a: [12_700, 12_700], b: [0, 25_400], block },
      operations: [[1, 0, 0, 1, 0, 0]],
    } as const;
    const drop: Tile = { ...tileOf(block, []), arrangement };
    await expect(rasterize(drop, { dpi: 75, cut: "unit" })).rejects.toThrow(
      "12.7 x 25.4 mm is not a whole number of pixels at 75 dpi",
    );
  });
});
