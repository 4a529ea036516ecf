import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DOMParser } from "@xmldom/xmldom";
import { decode as decodeFast } from "fast-png";
import { describe, expect, it } from "vitest";
import { rasterize } from "../../../src/output/png/rasterize.ts";
import { recipeInPng } from "../../../src/output/png/recipe-in-png.ts";
import type { Tile } from "../../../src/tile/tile.ts";
import { supersampled } from "../../flow/picture.ts";
import { refusal } from "../../given.ts";
import { chunksOf, decode, inksOf, psnr } from "./pictures.ts";
import { meadow, splitRoles, svgOf } from "./tiles.ts";

const field = meadow(203_200, 4, 3);
const shades = (tile: Tile): Record<string, string> =>
  Object.fromEntries(tile.recipe.roles.map((role, i) => [role, i % 2 ? "#101820" : "#f4ecdc"]));
const show = async (
  tile: Tile,
  width: number,
  inks: Record<string, string>,
  color?: "indexed" | "truecolor",
) => (await rasterize(tile, { width, color })).png({ name: "x", inks });

describe("roles and the palette", () => {
  // resvg (MPL-2.0), an independent renderer of SVG, supersampled 8 times.
  it.each([4, 6, 8, 12])("%i roles agree with resvg's picture by at least 40 dB", async (count) => {
    const tile = splitRoles(field, count);
    const inks = inksOf(tile);
    const judge = supersampled(svgOf(tile, inks, 400, 400), 400, 8);
    expect(psnr(decode(await show(tile, 400, inks)), judge)).toBeGreaterThanOrEqual(40);
  });

  // The palette's worst case: every other role dark, the rest light. `npm run bench -- raster` shows 3600 px.
  it.each([
    [4, 55, 0.0001],
    [6, 50, 0.001],
    [8, 45, 0.003],
  ])(
    "of %i are within %i dB of truecolour, and seldom off by more than 8 of 255",
    async (count, least, most) => {
      const tile = splitRoles(meadow(203_200, 6, 3), count);
      const [palette, full] = [
        decode(await show(tile, 1200, shades(tile), "indexed")),
        decode(await show(tile, 1200, shades(tile), "truecolor")),
      ];
      expect(psnr(palette, full)).toBeGreaterThanOrEqual(least);
      let off = 0;
      for (let i = 0; i < full.data.length; i += 4) if (Math.abs(palette.data[i]! - full.data[i]!) > 8) off++;
      expect(off / (1200 * 1200)).toBeLessThan(most);
    },
  );

  it("of more than a palette can hold falls back to truecolour by itself, and to no palette", async () => {
    for (const [count, color] of [
      [4, "indexed"],
      [12, "indexed"],
      [48, "truecolor"],
    ] as const) {
      const tile = splitRoles(field, count);
      const raster = await rasterize(tile, { width: 400 });
      expect([count, raster.color]).toEqual([count, color]);
      const png = raster.png({ name: "x", inks: inksOf(tile) });
      expect(chunksOf(png).some(({ type }) => type === "PLTE")).toBe(color === "indexed");
    }
  });
});

describe("truecolour", () => {
  it("reads the same by two readers, for one colorway after another", async () => {
    const raster = await rasterize(field, { width: 301, color: "truecolor", cut: { across: 2, down: 1 } });
    for (const inks of [inksOf(field), shades(field), inksOf(field)]) {
      const png = raster.png({ name: "x", inks });
      const [one, two] = [decode(png), decodeFast(png)];
      expect([two.width, two.height, two.channels, two.depth]).toEqual([one.width, one.height, 3, 8]);
      for (let i = 0, j = 0; j < two.data.length; i += 4, j += 3)
        if (
          one.data[i] !== two.data[j] ||
          one.data[i + 1] !== two.data[j + 1] ||
          one.data[i + 2] !== two.data[j + 2]
        )
          throw new Error(`pixel ${j / 3} differs`);
    }
    expect(raster.png({ name: "x", inks: shades(field) })).toEqual(
      raster.png({ name: "x", inks: shades(field) }),
    );
  });
});

describe("a PNG file of either kind", () => {
  const has = spawnSync("pngcheck", ["-h"]).error === undefined;
  if (!has) console.warn("SKIPPED: pngcheck is not installed, so no PNG was checked with it");
  it.skipIf(!has)("is accepted by pngcheck", async () => {
    const folder = mkdtempSync(join(tmpdir(), "sprigwright-png-"));
    const files: string[] = [];
    for (const [i, options] of (
      [
        { dpi: 25 },
        { dpi: 25, color: "truecolor" },
        { dpi: 25, cut: { width: 333, height: 444 } },
        { width: 300, cut: { across: 3, down: 3 }, color: "truecolor" },
      ] as const
    ).entries()) {
      files.push(join(folder, `${i}.png`));
      const about = { rights: "© Hollin Quay Prints <all> & sundry", title: "Möwe" };
      writeFileSync(
        files[i]!,
        (await rasterize(field, options)).png({ name: "x", inks: inksOf(field) }, about),
      );
    }
    expect(execFileSync("pngcheck", ["-q", ...files], { encoding: "utf8" })).toBe("");
    const broken = (await rasterize(field, { dpi: 25 })).png({ name: "x", inks: inksOf(field) });
    broken[broken.length - 40]! ^= 1;
    writeFileSync(files[0]!, broken);
    expect(spawnSync("pngcheck", ["-q", files[0]!]).status).not.toBe(0);
    rmSync(folder, { recursive: true });
  });

  it("says title, subject and rights as XMP, in the chunk that ISO 16684 and PNG's registry name", async () => {
    const told: Tile = { ...field, recipe: { ...field.recipe, subject: "meadow" } };
    const png = (await rasterize(told, { width: 9 })).png(
      { name: "x", inks: inksOf(field) },
      { rights: "© Quay & Co" },
    );
    const texts = chunksOf(png)
      .filter(({ type }) => type === "iTXt")
      .map(({ data }) => Buffer.from(data));
    // From memory: keyword, then five zero bytes, so that readers find the packet without unpacking.
    const head = "XML:com.adobe.xmp\0\0\0\0\0";
    const xmp = texts.find((text) => text.toString("latin1").startsWith(head))!.subarray(head.length);
    const root = new DOMParser().parseFromString(
      xmp
        .toString("utf8")
        .replace(/<\?xpacket[^>]*>/g, "")
        .trim(),
      "text/xml",
    ).documentElement!;
    const text = (name: string) =>
      root.getElementsByTagNameNS("http://purl.org/dc/elements/1.1/", name)[0]!.textContent;
    expect(["title", "description", "rights"].map(text)).toEqual(["by-hand, x", "meadow", "© Quay & Co"]);
  });

  it("gives its recipe, colorway and digest back, whether short or long", async () => {
    for (const subject of ["pear", "pears, ".repeat(500), "Birnen, grün · 梨"]) {
      const told: Tile = { ...field, recipe: { ...field.recipe, subject } };
      const png = (await rasterize(told, { width: 9 })).png({ name: "dämmerung", inks: inksOf(field) });
      expect(recipeInPng(png)).toEqual({ recipe: told.recipe, colorway: "dämmerung", digest: field.digest });
    }
  });

  it("refuses words about itself that are none", async () => {
    const raster = await rasterize(field, { width: 9 });
    const png = (about: unknown) => () => raster.png({ name: "x", inks: inksOf(field) }, about as never);
    expect(refusal(png({ rigths: "x" })).message).toContain('did you mean "rights"');
    expect(refusal(png({ title: 3 })).code).toBe("wrong-type");
  });
});
