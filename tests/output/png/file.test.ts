import { inflateSync, crc32 as zlibCrc } from "node:zlib";
import { describe, expect, it } from "vitest";
import { crc32 } from "../../../src/output/png/chunks.ts";
import { rasterize } from "../../../src/output/png/rasterize.ts";
import type { Tile } from "../../../src/tile/tile.ts";
import { chunksOf, decode, inksOf, picture } from "./pictures.ts";
import { circle, meadow, tileOf } from "./tiles.ts";

const tile = meadow(101_600, 4, 6); // 4 in
const inks = inksOf(tile);
const types = (png: Uint8Array): string[] => chunksOf(png).map((chunk) => chunk.type);

/** Text of an iTXt chunk without language (PNG, third edition, 11.3.3.4). */
function noteOf(png: Uint8Array): {
  keyword: string;
  note: { recipe: unknown; colorway: string; digest: string };
} {
  const data = Buffer.from(chunksOf(png).find((chunk) => chunk.type === "iTXt")!.data);
  const end = data.indexOf(0);
  const body = data.subarray(end + 5);
  const text = data[end + 1] === 1 ? inflateSync(body) : body;
  return { keyword: data.toString("latin1", 0, end), note: JSON.parse(text.toString("utf8")) };
}

describe("a PNG file", () => {
  it("has its chunks in the order that PNG, third edition, 5.6 wants, each with the right CRC", async () => {
    const png = (await rasterize(tile, { dpi: 300 })).png({ name: "dawn", inks });
    expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
    expect(types(png)).toEqual(["IHDR", "sRGB", "pHYs", "PLTE", "tEXt", "iTXt", "iTXt", "IDAT", "IEND"]);
    for (const { type, data, crc } of chunksOf(png)) {
      // The check polynomial of annex D is zlib's, so zlib is the judge where Node has it.
      const bytes = Buffer.concat([Buffer.from(type), data]);
      expect(crc).toBe(typeof zlibCrc === "function" ? zlibCrc(bytes) : crc32(bytes));
    }
    expect(chunksOf(png).at(-1)!.crc).toBe(0xae426082);
  });

  it("has the check value of CRC-32", () => {
    expect(crc32(Buffer.from("123456789"))).toBe(0xcbf43926);
  });

  it("says its true size: 300 dpi is 11 811 pixels a metre", async () => {
    const raster = await rasterize(tile, { dpi: 300 });
    expect([raster.width, raster.height, raster.dpi]).toEqual([1200, 1200, 300]);
    const phys = Buffer.from(
      chunksOf(raster.png({ name: "dawn", inks })).find(({ type }) => type === "pHYs")!.data,
    );
    expect([phys.readUInt32BE(0), phys.readUInt32BE(4), phys[8]]).toEqual([11_811, 11_811, 1]);
  });

  it("says both resolutions where a width stretches the pixels, and none it cannot say", async () => {
    const odd = tileOf({ width: 100_000, height: 33_000 }, []);
    const phys = Buffer.from(
      chunksOf((await rasterize(odd, { width: 10 })).png({ name: "x", inks })).find(
        ({ type }) => type === "pHYs",
      )!.data,
    );
    expect([phys.readUInt32BE(0), phys.readUInt32BE(4)]).toEqual([100, Math.round(3 / 0.033)]);
    const huge = tileOf({ width: 100_000_000, height: 100_000_000 }, []);
    expect(types((await rasterize(huge, { width: 10 })).png({ name: "x", inks }))).not.toContain("pHYs");
  });

  it("carries recipe, colorway and digest, whether short or long", async () => {
    for (const subject of ["pear", "pears, ".repeat(500), "Birnen, grün · 梨"]) {
      const told: Tile = { ...tile, recipe: { ...tile.recipe, subject } };
      const png = (await rasterize(told, { width: 20 })).png({ name: "dämmerung", inks });
      const { keyword, note } = noteOf(png);
      expect(keyword).toBe("sprigwright:recipe");
      expect(note).toEqual({ recipe: told.recipe, colorway: "dämmerung", digest: tile.digest });
    }
  });

  it("differs from colorway to colorway in palette and text alone", async () => {
    const raster = await rasterize(tile, { width: 300 });
    const first = chunksOf(raster.png({ name: "first", inks }));
    const others = {
      ground: "#101820",
      stem: "#ffffff",
      leaf: "#00ff00",
      petal: "#ff00ff",
      centre: "#0000ff",
    };
    const tenth = chunksOf(raster.png({ name: "tenth", inks: others }));
    const changed = first.filter(({ data }, i) => Buffer.compare(data, tenth[i]!.data) !== 0);
    expect(tenth.length).toBe(first.length);
    expect(changed.map(({ type }) => type)).toEqual(["PLTE", "iTXt", "iTXt"]);
  });

  it("is the same to the byte, twice over", async () => {
    const [a, b] = [await rasterize(tile, { width: 300 }), await rasterize(tile, { width: 300 })];
    expect(Buffer.compare(a.png({ name: "x", inks }), b.png({ name: "x", inks }))).toBe(0);
  });

  it("shows exactly the inks away from edges", async () => {
    const dot = tileOf({ width: 10_000, height: 10_000 }, [{ role: "dot", path: circle(5000, 5000, 3000) }]);
    const { data } = decode(
      (await rasterize(dot, { width: 30 })).png({ name: "x", inks: { ground: "#123456", dot: "#fedcba" } }),
    );
    expect([...data.subarray(0, 4)]).toEqual([0x12, 0x34, 0x56, 255]);
    expect([...data.subarray((15 * 30 + 15) * 4, (15 * 30 + 15) * 4 + 4)]).toEqual([0xfe, 0xdc, 0xba, 255]);
  });

  it("paints a layer whose role is the ground in the ground's ink", async () => {
    const eye = tileOf({ width: 10_000, height: 10_000 }, [
      { role: "dot", path: circle(5000, 5000, 4000) },
      { role: "ground", path: circle(5000, 5000, 2000) },
    ]);
    const { data } = decode(
      (await rasterize(eye, { width: 20 })).png({ name: "x", inks: { ground: "#123456", dot: "#fedcba" } }),
    );
    expect([...data.subarray((10 * 20 + 10) * 4, (10 * 20 + 10) * 4 + 3)]).toEqual([0x12, 0x34, 0x56]);
  });
});

describe("a field of several blocks", () => {
  it.each([
    [1, 2, 61],
    [3, 1, 61],
    [4, 3, 61],
    [5, 2, 2],
    [3, 3, 1],
  ])("of %i x %i is the block of %i pixels again and again", async (across, down, pixels) => {
    const one = await picture(tile, pixels);
    const raster = await rasterize(tile, { width: pixels * across, cut: { across, down } });
    const field = decode(raster.png({ name: "x", inks }));
    expect([field.width, field.height]).toEqual([pixels * across, pixels * down]);
    for (let y = 0; y < field.height; y++)
      for (let x = 0; x < field.width; x++) {
        const from = ((y % pixels) * pixels + (x % pixels)) * 4;
        const at = (y * field.width + x) * 4;
        if (Buffer.compare(field.data.subarray(at, at + 4), one.data.subarray(from, from + 4)) !== 0)
          throw new Error(`pixel ${x}, ${y} differs`);
      }
  });

  it("keeps the true size", async () => {
    const raster = await rasterize(tile, { dpi: 75, cut: { across: 2, down: 3 } });
    expect([raster.width, raster.height, raster.dpi]).toEqual([600, 900, 75]);
  });
});
