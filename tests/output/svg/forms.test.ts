import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Resvg } from "@resvg/resvg-js";
import { DOMParser } from "@xmldom/xmldom";
import { SVGPathData } from "svg-pathdata";
import { describe, expect, it } from "vitest";
import { areaOf, type Path } from "../../../src/geometry/path.ts";
import { rasterize } from "../../../src/output/png/rasterize.ts";
import { knockOut } from "../../../src/output/svg/knock-out.ts";
import { recipeInSvg } from "../../../src/output/svg/recipe-in-svg.ts";
import { type SvgOptions, toSvg } from "../../../src/output/svg/to-svg.ts";
import { supersampled } from "../../flow/picture.ts";
import { refusal } from "../../given.ts";
import { decode, inksOf, type Pixels, psnr } from "../png/pictures.ts";
import { circle, meadow, rectangle, tileOf } from "../png/tiles.ts";

const tile = meadow(101_600, 4, 2); // 4 in
const inks = inksOf(tile);
const noon = { name: "noon", inks };
const drawn = (svg: string, width: number): Pixels =>
  decode(new Resvg(svg, { fitTo: { mode: "width", value: width } }).render().asPng());
const rootOf = (svg: string) => new DOMParser().parseFromString(svg, "image/svg+xml").documentElement!;

const FORMS: readonly SvgOptions[] = [
  {},
  { layers: "knocked-out" },
  { pattern: true, cut: { across: 3, down: 2 } },
  { cut: { width: "5.5in", height: 90 }, rights: "Hollin Quay Prints & sons <all rights>", title: "Réveil" },
  { pattern: true, layers: "knocked-out", cut: { width: 150, height: 150 } },
  { cut: "unit", subject: 'meadow\u0000\u0008 "flowers" 🌼' },
];

describe("every form of an SVG file", () => {
  // libxml2's xmllint (Debian: libxml2-utils), a parser that has nothing to do with this library.
  const has = spawnSync("xmllint", ["--version"]).status === 0;
  if (!has) console.warn("SKIPPED: xmllint is not installed, so no SVG was checked with it (libxml2-utils)");
  it.skipIf(!has)("is accepted by xmllint", () => {
    const folder = mkdtempSync(join(tmpdir(), "sprigwright-svg-"));
    const files = FORMS.map((options, i) => {
      writeFileSync(join(folder, `${i}.svg`), toSvg(tile, noon, options));
      return join(folder, `${i}.svg`);
    });
    expect(execFileSync("xmllint", ["--noout", ...files], { encoding: "utf8" })).toBe("");
    writeFileSync(files[0]!, "<svg><title>a & b</svg>");
    expect(spawnSync("xmllint", ["--noout", files[0]!]).status).not.toBe(0);
    rmSync(folder, { recursive: true });
  });

  it("gives its recipe, colorway and digest back, also when another program wrote it again", () => {
    const told = { ...tile, recipe: { ...tile.recipe, seed: '<ebb> & "flow" 潮' } };
    for (const options of FORMS) {
      const svg = toSvg(told, noon, options);
      const kept = { recipe: told.recipe, colorway: "noon", digest: tile.digest };
      expect(recipeInSvg(svg)).toEqual(kept);
      const element = /<recipe xmlns="([^"]+)">([^<]*)<\/recipe>/.exec(svg)!;
      const moved = `<svg xmlns:sw="${element[1]}"><sw:recipe id="a">${element[2]!.replaceAll("&quot;", "&#34;").replaceAll("&lt;", "&#x3c;")}</sw:recipe></svg>`;
      expect(recipeInSvg(moved)).toEqual(kept);
    }
    expect(recipeInSvg("<svg><recipe>{}</recipe></svg>")).toBeUndefined();
    expect(
      recipeInSvg('<svg><recipe xmlns="urn:sprigwright:recipe">{"recipe":3}</recipe></svg>'),
    ).toBeUndefined();
    expect(recipeInSvg("")).toBeUndefined();
    expect(refusal(() => recipeInSvg(3 as never)).code).toBe("wrong-type");
  });

  it("says title, subject and rights as XMP (ISO 16684-1)", () => {
    const root = rootOf(toSvg(tile, noon, { title: "Dawn <1>", subject: "meadow", rights: "© Hollin Quay" }));
    const text = (name: string) =>
      root.getElementsByTagNameNS("http://purl.org/dc/elements/1.1/", name)[0]!.textContent!.trim();
    expect([text("title"), text("description"), text("rights")]).toEqual([
      "Dawn <1>",
      "meadow",
      "© Hollin Quay",
    ]);
    expect(root.getElementsByTagName("title")[0]!.textContent).toBe("Dawn <1>");
  });

  it("has one path for each role, and no id twice", () => {
    for (const options of FORMS) {
      const ids = [...toSvg(tile, noon, options).matchAll(/ id="([^"]+)"/g)].map(([, id]) => id!);
      expect(new Set(ids).size).toBe(ids.length);
      for (const role of tile.recipe.roles) expect(ids).toContain(role);
    }
  });
});

describe("a cut", () => {
  it("shows what a PNG of the same cut shows, by resvg's drawing: at least 40 dB", async () => {
    const cut = { width: "5.5in", height: "3in" } as const;
    const ours = decode((await rasterize(tile, { dpi: 100, cut })).png(noon));
    const theirs = drawn(toSvg(tile, noon, { cut }), 550);
    expect([theirs.width, theirs.height]).toEqual([550, 300]);
    expect(psnr(ours, theirs)).toBeGreaterThanOrEqual(40);
  });

  it("filled with a pattern shows the same, with the block there once", () => {
    const cut = { across: 2, down: 2 };
    const svg = toSvg(tile, noon, { cut, pattern: true });
    expect(svg.length).toBeLessThan(1.1 * toSvg(tile, noon).length);
    // A pattern's block may be drawn on a grid of its own: 35 dB is what resvg itself comes to.
    expect(psnr(drawn(svg, 800), drawn(toSvg(tile, noon, { cut }), 800))).toBeGreaterThan(35);
  });
});

describe("knocked out", () => {
  it("covers every spot exactly once: what all roles cover adds up to the sheet, by resvg", () => {
    const root = toSvg(tile, noon, { layers: "knocked-out" }).replace(
      "  <title>",
      '<rect width="100%" height="100%" fill="#fff"/><title>',
    );
    const sum = new Float64Array(300 * 300);
    for (const role of tile.recipe.roles) {
      const ink = (_: string, id: string): string =>
        `<path id="${id}" fill="${id === role ? "#000" : "none"}"`;
      const { data } = supersampled(root.replace(/<path id="([^"]+)" fill="[^"]+"/g, ink), 300, 8);
      for (let i = 0; i < sum.length; i++) sum[i]! += 255 - data[4 * i]!;
    }
    const worst = sum.reduce((most, total) => Math.max(most, Math.abs(total - 255)), 0);
    expect(worst).toBeLessThanOrEqual(5); // each role's share is rounded, some by resvg's own smoothing
  });

  it("works across the edges: a shape at the right cuts one at the left", () => {
    const two = tileOf({ width: 20_000, height: 20_000 }, [
      { role: "leaf", path: rectangle(-2000, 5000, 6000, 6000) },
      { role: "fruit", path: rectangle(17_000, 8000, 2000, 20_000) }, // goes on at the top: 8000 to 20 000 and 0 to 8000
    ]);
    const [ground, leaf, fruit] = knockOut(two, two.block);
    expect(areaOf(leaf!)).toBe(6000 * 6000 - 1000 * 6000);
    expect(areaOf(fruit!)).toBe(2000 * 20_000);
    expect(areaOf(ground!)).toBe(20_000 * 20_000 - 5000 * 6000 - 2000 * 20_000);
  });

  it("ends every role at the edge of the cut, so that a cutter leaves what lies beyond", () => {
    for (const options of [{ cut: "block" }, { cut: { width: 90, height: "2.2in" } }] as const) {
      const svg = toSvg(tile, noon, { ...options, layers: "knocked-out" });
      const [width, height] = /viewBox="0 0 ([^"]+)"/.exec(svg)![1]!.split(" ").map(Number) as [
        number,
        number,
      ];
      for (const [, data] of svg.matchAll(/ d="([^"]+)"/g)) {
        const { minX, minY, maxX, maxY } = new SVGPathData(data!).getBounds(); // svg-pathdata
        expect([minX >= 0, minY >= 0, maxX <= width, maxY <= height]).toEqual([true, true, true, true]);
      }
    }
  });

  it("leaves curves alone that nothing lies on, and cuts round holes with curves", () => {
    const one = tileOf({ width: 40_000, height: 40_000 }, [
      { role: "leaf", path: rectangle(5000, 5000, 20_000, 20_000) },
      { role: "fruit", path: circle(15_000, 15_000, 5000) },
      { role: "seed", path: circle(33_000, 33_000, 3000) },
    ]);
    const [, leaf, fruit, seed] = knockOut(one, one.block);
    expect(curvesOf(fruit!)).toEqual(curvesOf(one.layers[1]!.path));
    expect(curvesOf(seed!)).toEqual(curvesOf(one.layers[2]!.path));
    expect(leaf!.contours).toEqual([4, 4]); // four sides, and a circle of four curves
    expect(areaOf(leaf!)).toBeCloseTo(20_000 ** 2 - areaOf(one.layers[1]!.path), 0);
  });
});

/** The curves of a path of one contour, from the least on: where a contour begins is of no account. */
const curvesOf = ({ points }: Path): string[] => {
  const next = (i: number): number => (i + 6 < points.length ? i + 6 : 0);
  return Array.from({ length: points.length / 6 }, (_, k) =>
    [...points.subarray(6 * k, 6 * k + 6), points[next(6 * k)], points[next(6 * k) + 1]].join(" "),
  ).sort();
};

describe("toSvg refuses", () => {
  it.each([
    [{ layers: "knockedout" }, "unknown-layering", 'did you mean "knocked-out"'],
    [{ cut: { across: 900, down: 900 } }, "drawing-too-large", "pattern: true"],
    [{ pattern: 1 }, "wrong-type", "true or false"],
    [{ tilte: "x" }, "unknown-option", 'did you mean "title"'],
    [{ title: 3 }, "wrong-type", "text of at most"],
    [3, "wrong-type", "options"],
  ])("%o", (options, code, words) => {
    const error = refusal(() => toSvg(tile, noon, options as never));
    expect(error.code).toBe(code);
    expect(error.message).toContain(words);
  });
});
