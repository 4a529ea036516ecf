import { Resvg } from "@resvg/resvg-js";
import { describe, expect, it } from "vitest";
import { reversePath } from "../../../src/geometry/matrix.ts";
import { joinPaths, type Path } from "../../../src/geometry/path.ts";
import { rasterize } from "../../../src/output/png/rasterize.ts";
import { averaged, decode, differing, inksOf, picture, psnr } from "./pictures.ts";
import { circle, meadow, rectangle, svgOf, tileOf } from "./tiles.ts";

/** Area that one layer covers, in pixels, read off a white-on-black picture. */
async function covered(path: Path, pixels: number): Promise<number> {
  const tile = tileOf({ width: 100_000, height: 100_000 }, [{ role: "shape", path }]);
  const raster = await rasterize(tile, { width: pixels });
  const { data } = decode(raster.png({ name: "x", inks: { ground: "#000000", shape: "#ffffff" } }));
  let sum = 0;
  for (let i = 0; i < data.length; i += 4) sum += data[i]!;
  return sum / 255;
}

/** Largest radial error of a quarter circle as one cubic (Goldapp 1991), which bounds its error of area. */
const CUBIC = 2.8e-4;

describe("coverage", () => {
  it.each([
    [50_000, 50_000],
    [0, 0],
    [99_777, 31_234],
  ])("of a circle at (%i, %i) is pi r²", async (x, y) => {
    for (const pixels of [200, 501, 1000]) {
      const r = (31_415 / 100_000) * pixels;
      const area = Math.PI * r * r;
      // Sides within 0.02 pixels of the curve, and edge pixels rounded to 1/255, on average to nothing.
      expect(Math.abs((await covered(circle(x, y, 31_415), pixels)) - area) / area).toBeLessThan(
        CUBIC + 0.04 / r,
      );
    }
  });

  it("of rectangles is exact to 1/255 of a pixel, wherever they lie", async () => {
    expect(await covered(rectangle(10_000, 10_000, 20_000, 30_000), 100)).toBe(600);
    expect(await covered(rectangle(10_500, 10_000, 20_000, 30_000), 100)).toBeCloseTo(600, 0);
    expect(await covered(rectangle(90_000, 95_000, 20_000, 30_000), 100)).toBe(600);
    expect(await covered(rectangle(0, 0, 100_000, 100_000), 100)).toBe(10_000);
  });

  it("leaves holes out, and counts what lies twice over itself once", async () => {
    const holed = joinPaths([
      rectangle(10_000, 10_000, 50_000, 50_000),
      reversePath(rectangle(20_000, 20_000, 10_000, 10_000)),
    ]);
    expect(await covered(holed, 100)).toBe(2400);
    const twice = joinPaths([
      rectangle(10_000, 10_000, 50_000, 50_000),
      rectangle(30_000, 10_000, 50_000, 50_000),
    ]);
    expect(await covered(twice, 100)).toBe(3500);
  });

  it("hides all that lies beneath, where a layer lies twice over itself", async () => {
    const edges = joinPaths(Array.from({ length: 9 }, (_, i) => circle(i * 11_111, i * 7001, 9000)));
    const cover = joinPaths([rectangle(0, 0, 100_000, 100_000), rectangle(5000, 5000, 100_000, 100_000)]);
    const tile = tileOf({ width: 100_000, height: 100_000 }, [
      { role: "under", path: edges },
      { role: "over", path: cover },
    ]);
    const { data } = await picture(tile, 90);
    const colors = new Set(Array.from({ length: 8100 }, (_, i) => data.subarray(i * 4, i * 4 + 3).join()));
    expect([...colors]).toEqual(["95,139,95"]); // #5f8b5f
  });

  it("of a shape that overlaps itself around the block is full", async () => {
    expect(await covered(rectangle(40_000, 20_000, 250_000, 10_000), 100)).toBe(1000);
  });

  it("agrees with resvg, supersampled 8 x 8, to 46 dB at 450 pixels", async () => {
    const tile = meadow(101_600, 4, 3);
    const own = await picture(tile, 450);
    const large = new Resvg(svgOf(tile, inksOf(tile), 3600, 3600)).render();
    const truth = averaged({ width: 3600, height: 3600, data: large.pixels }, 8);
    expect(psnr(own, truth)).toBeGreaterThan(46);
    // and this measure notices a pixel's shift
    const off = tile.layers.map(({ role, path }) => ({
      role,
      path: { ...path, points: path.points.map((v, i) => (i % 2 ? v : v + 226)) },
    }));
    expect(psnr(await picture({ ...tile, layers: off }, 450), truth)).toBeLessThan(30);
  });
});

describe("bands", () => {
  it("of any height give the same bytes", async () => {
    const tile = meadow(120_000, 5, 9);
    const colorway = { name: "test", inks: inksOf(tile) };
    const bytes = (await rasterize(tile, { width: 311 })).png(colorway);
    for (const rows of [1, 7, 17, 64, 310, 311, 500])
      expect(Buffer.compare((await rasterize(tile, { width: 311 }, rows)).png(colorway), bytes)).toBe(0);
  });

  it("show the same in a picture of one row", async () => {
    const tile = tileOf({ width: 100_000, height: 900 }, [{ role: "dot", path: circle(50_000, 450, 3000) }]);
    const one = await picture(tile, 100);
    expect([one.width, one.height]).toEqual([100, 1]);
    expect(differing(one, await picture(tile, 100, 3))).toBe(0);
  });
});
