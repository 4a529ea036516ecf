import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { Resvg } from "@resvg/resvg-js";
import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { ringArea } from "../../../src/geometry/flatten.ts";
import { artPrint } from "../../../src/output/sheet/art-print.ts";
import { colorwaySheet } from "../../../src/output/sheet/colorway-sheet.ts";
import { clipSides } from "../../../src/output/sheet/draw/clipped-sides.ts";
import { pagesToPdf } from "../../../src/output/sheet/draw/to-pdf.ts";
import { pageToPng } from "../../../src/output/sheet/draw/to-png.ts";
import { pageToSvg } from "../../../src/output/sheet/draw/to-svg.ts";
import { rectangle } from "../../../src/output/sheet/marks.ts";
import type { Cloth, Page } from "../../../src/output/sheet/page.ts";
import { strikeOffSheet } from "../../../src/output/sheet/strike-off.ts";
import { refusal, refusalOf } from "../../given.ts";
import { areInstalled, askAbout, madeOf } from "../outside.ts";
import { colorwaysOf, dawn, decode, font, psnr, tile } from "./given.ts";

const pages: Readonly<Record<string, Page>> = {
  "a strike-off": strikeOffSheet({ tile, colorway: dawn, font, size: { width: "4.25in", height: "5.75in" } }),
  "colorways at another scale": colorwaySheet({
    tile,
    colorways: colorwaysOf(4),
    font,
    size: { width: 127, height: 127 },
  }),
  "a print with bleed": artPrint({
    tile,
    colorway: dawn,
    size: { width: 101.6, height: 101.6 },
    bleed: 6.35,
  }),
};

describe("a page", () => {
  // resvg as an independent renderer of the SVG; its edges are smoothed by 16 x 16 samples.
  test.each(Object.entries(pages))(
    "%s: the PNG shows what the SVG says, as resvg draws it",
    async (_, page) => {
      const ours = decode(await pageToPng(page, { dpi: 120 }));
      const drawn = new Resvg(pageToSvg(page), { fitTo: { mode: "width", value: ours.width } }).render();
      const theirs = { width: drawn.width, height: drawn.height, data: drawn.pixels };
      expect(psnr(ours, theirs, page)).toBeGreaterThan(42);
    },
  );

  // poppler as an independent reader; a Debian package that may be missing.
  test.runIf(areInstalled("pdftoppm")).each(Object.entries(pages))(
    "%s: the PDF shows the same, as poppler draws it",
    async (_, page) => {
      const words = ["-r", "120", "-png", "-singlefile", "file", "page"];
      const theirs = await madeOf(await pagesToPdf(page), "pdftoppm", words, async (folder) =>
        decode(await readFile(join(folder, "page.png"))),
      );
      const ours = decode(await pageToPng(page, { dpi: 120 }));
      expect(psnr(ours, theirs, page)).toBeGreaterThan(38);
    },
  );

  test.runIf(areInstalled("qpdf"))("is a sound PDF, one page after the other", async () => {
    const bytes = await pagesToPdf(Object.values(pages), {
      title: "Shore",
      rights: "Hollin Quay Print Studio",
    });
    expect(askAbout(bytes, "qpdf", "--check", "file")).toContain("No syntax or stream encoding errors");
    expect(askAbout(bytes, "qpdf", "--show-npages", "file").trim()).toBe("3");
  });

  test.runIf(areInstalled("xmllint", "pngcheck"))("is sound XML and a sound PNG", async () => {
    for (const page of Object.values(pages)) {
      askAbout(pageToSvg(page), "xmllint", "--noout", "file");
      expect(askAbout(await pageToPng(page, { dpi: 60 }), "pngcheck", "file")).toMatch(/^OK: file/);
    }
  });

  it("gives the same bytes again", async () => {
    const page = pages["a print with bleed"]!;
    expect(await pageToPng(page, { dpi: 60 })).toEqual(await pageToPng(page, { dpi: 60 }));
    expect(await pagesToPdf(page)).toEqual(await pagesToPdf(page));
  });

  it("holds a pattern's shapes once for all colorways of one cut", () => {
    const sizes = [2, 8].map(
      (count) => pageToSvg(colorwaySheet({ tile, colorways: colorwaysOf(count), font })).length,
    );
    expect(sizes[1]! / sizes[0]!).toBeLessThan(2);
  });

  it("is true to its size: dots per metre, pixels, and mm", async () => {
    const page = pages["a print with bleed"]!;
    const png = Buffer.from(await pageToPng(page, { dpi: 300 }));
    const at = png.indexOf("pHYs") + 4;
    expect([png.readUInt32BE(at), png.readUInt32BE(at + 4), png[at + 8]]).toEqual([11_811, 11_811, 1]); // PNG, 11.3.4.3
    expect([png.readUInt32BE(16), png.readUInt32BE(20), png[25]]).toEqual([1350, 1350, 2]); // 4.5 inches, truecolour
    expect(pageToSvg(page)).toContain('width="114.3mm" height="114.3mm" viewBox="-6.35 -6.35 114.3 114.3"');
  });

  it("is white where nothing is, and shows plain ink where one shape is", async () => {
    const page: Page = {
      title: "t",
      size: { width: 20_000, height: 20_000 },
      bleed: 0,
      items: [rectangle(5, 5, 10, 10, "#28536b")],
    };
    const { data, width } = decode(await pageToPng(page, { dpi: 254 }));
    const at = (x: number, y: number) => [...data.subarray((y * width + x) * 4, (y * width + x) * 4 + 3)];
    expect(at(10, 10)).toEqual([255, 255, 255]);
    expect(at(50, 50)).toEqual([0x28, 0x53, 0x6b]);
    expect(at(149, 149)).toEqual([0x28, 0x53, 0x6b]);
    expect(at(150, 150)).toEqual([255, 255, 255]);
  });

  it("is refused at a dpi that makes no picture, and stops when it is called off", async () => {
    const [page] = Object.values(pages) as [Page];
    expect((await refusalOf(() => pageToPng(page, { dpi: 0 }))).code).toBe("number-range");
    expect((await refusalOf(() => pageToPng(page, { dpi: 72.5 }))).code).toBe("wrong-type");
    expect((await refusalOf(() => pageToPng(page, null as never))).code).toBe("wrong-type");
    expect((await refusalOf(() => pageToPng(page, { dip: 72 } as never))).message).toContain(
      'did you mean "dpi"',
    );
    const large = artPrint({ tile, colorway: dawn, size: { width: 5000, height: 5000 } });
    expect((await refusalOf(() => pageToPng(large, { dpi: 1200 }))).code).toBe("raster-size");
    // 5 m of a repeat of 6 mm: PDF draws the block once, however often it repeats.
    const tiny = { ...tile, block: { width: 6000, height: 2000 } };
    const wall = artPrint({ tile: tiny, colorway: dawn, size: { width: 5000, height: 5000 } });
    expect(refusal(() => pageToSvg(wall)).code).toBe("too-many-shapes");
    await expect(pageToPng(page, { signal: AbortSignal.abort(new Error("enough")) })).rejects.toThrow(
      "enough",
    );
    expect((await refusalOf(() => pagesToPdf([]))).code).toBe("missing-option");
    expect((await refusalOf(() => pagesToPdf(page, { titel: "x" } as never))).code).toBe("unknown-option");
  });
});

describe("a page made by hand", () => {
  const sound: Page = { title: "t", size: { width: 50_000, height: 50_000 }, bleed: 0, items: [] };
  const mark = rectangle(5, 5, 10, 10, "#28536b");
  const cloth = pages["a print with bleed"]!.items[0] as Cloth;

  test.each<[string, object]>([
    ["an ink that would break out of an SVG", { items: [{ ...mark, ink: '"/><script/>' }] }],
    ["an ink by name", { items: [{ ...mark, ink: "red" }] }],
    ["a path that is none", { items: [{ ...mark, path: "M0 0L9 9Z" }] }],
    ["an item of no kind", { items: [{ ...mark, kind: "line" }] }],
    ["nothing for an item", { items: [undefined] }],
    ["an area inside out", { items: [{ ...cloth, area: { minX: 9, minY: 9, maxX: 0, maxY: 0 } }] }],
    ["a scale of 0", { items: [{ ...cloth, scale: 0 }] }],
    ["a place that is no number", { items: [{ ...cloth, at: [0, Number.NaN] }] }],
    ["no size", { size: { width: 0, height: 50_000 } }],
    ["a bleed below 0", { bleed: -1 }],
    ["a title that is none", { title: undefined }],
    ["items that are no list", { items: "none" }],
  ])("is refused with %s, by all that draw", async (_, odd) => {
    const page = { ...sound, ...odd } as Page;
    expect(refusal(() => pageToSvg(page)).code).toBe("bad-page");
    expect((await refusalOf(() => pageToPng(page))).code).toBe("bad-page");
    expect((await refusalOf(() => pagesToPdf(page))).code).toBe("bad-page");
  });

  it("may hold cloth that lies beside the page: nothing of it is drawn", async () => {
    const area = { minX: 60_000, minY: 0, maxX: 90_000, maxY: 50_000 };
    const page = { ...sound, items: [{ ...cloth, area }] };
    expect(new Set(decode(await pageToPng(page, { dpi: 50 })).data)).toEqual(new Set([255]));
    expect(pageToSvg(page)).not.toContain("#f6ead7");
  });

  it("has a title that is text, whatever it says", () => {
    expect(pageToSvg({ ...sound, title: "Salt & <b>tide</b>" })).toContain(
      "<title>Salt &amp; &lt;b&gt;tide&lt;/b&gt;</title>",
    );
  });
});

describe("sides cut to a window", () => {
  it("enclose the area of the polygon within it, as Sutherland and Hodgman cut it (1974)", () => {
    const coordinate = fc.integer({ min: -4000, max: 8000 });
    const window = { left: 256, top: 512, right: 2560, bottom: 3072 };
    fc.assert(
      fc.property(fc.array(coordinate, { minLength: 6, maxLength: 16 }), (values) => {
        const ring = values.slice(0, values.length - (values.length % 2));
        let area = 0;
        clipSides(ring, window, (x0, y0, x1, y1) => {
          for (const x of [x0, x1]) expect(x >= window.left && x <= window.right).toBe(true);
          for (const y of [y0, y1]) expect(y >= window.top && y <= window.bottom).toBe(true);
          // What lies to the left of a side that runs down counts less: Green's theorem in x.
          area += ((x0 + x1) / 2) * (y1 - y0);
        });
        const inside = clipped(ring, window);
        // Cuts fall on whole numbers: each side may be off by one along its length.
        expect(Math.abs(area - ringArea(Float64Array.from(inside)))).toBeLessThanOrEqual(
          8000 * (ring.length / 2),
        );
      }),
      { numRuns: 300 },
    );
  });
});

interface Window {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Sutherland and Hodgman's clipping, written from its description: edge by edge. */
function clipped(ring: readonly number[], { left, top, right, bottom }: Window): number[] {
  type Point = readonly [number, number];
  let points: Point[] = [];
  for (let i = 0; i < ring.length; i += 2) points.push([ring[i]!, ring[i + 1]!]);
  const edges: readonly (readonly [axis: 0 | 1, at: number, sign: 1 | -1])[] = [
    [0, left, 1],
    [0, right, -1],
    [1, top, 1],
    [1, bottom, -1],
  ];
  for (const [axis, at, sign] of edges)
    points = points.flatMap((p, i) => {
      const q = points[(i + 1) % points.length]!;
      const [dp, dq] = [(p[axis] - at) * sign, (q[axis] - at) * sign];
      const t = dp / (dp - dq);
      const cross: Point = [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
      return [...(dp >= 0 ? [p] : []), ...(dp >= 0 !== dq >= 0 ? [cross] : [])];
    });
  return points.flat();
}
