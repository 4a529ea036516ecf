import { describe, expect, it } from "vitest";
import { extentOf } from "../../../src/geometry/extent.ts";
import { placing, transformPath } from "../../../src/geometry/matrix.ts";
import { artPrint } from "../../../src/output/sheet/art-print.ts";
import { pageToPng } from "../../../src/output/sheet/draw/to-png.ts";
import type { Cloth } from "../../../src/output/sheet/page.ts";
import { refusal } from "../../given.ts";
import { dawn, decode, tile } from "./given.ts";

const clothOf = (options: Partial<Parameters<typeof artPrint>[0]> = {}): Cloth =>
  artPrint({ tile, colorway: dawn, size: "8x10in", ...options }).items[0] as Cloth;

describe("an art print", () => {
  it("is the pattern at true size on a page of the standard's size, with its bleed filled", () => {
    const page = artPrint({ tile, colorway: dawn, size: "A3", landscape: true, bleed: "0.125in" });
    expect(page.size).toEqual({ width: 420_000, height: 297_000 });
    expect(page.bleed).toBe(3175);
    const cloth = page.items[0] as Cloth;
    expect(cloth.scale).toBe(1);
    expect(cloth.area).toEqual({ minX: -3175, minY: -3175, maxX: 423_175, maxY: 300_175 });
  });

  it("has the middle of the repeat, or of one motif, in the middle of the page", () => {
    const { width, height } = tile.block;
    for (const { id, motif, x, y, turn, scale, flip } of tile.placements) {
      const outline = transformPath(tile.motifs[motif]!.outline, placing(x, y, turn, scale, flip));
      const middle = ([0, 1] as const).map(
        (axis) => (extentOf(outline, axis)[0] + extentOf(outline, axis)[1]) / 2,
      );
      const { at } = clothOf({ centre: id });
      const off = [101_600 - at[0] - middle[0]!, 127_000 - at[1] - middle[1]!];
      expect(Math.abs(off[0]! - width * Math.round(off[0]! / width))).toBeLessThanOrEqual(0.5);
      expect(Math.abs(off[1]! - height * Math.round(off[1]! / height))).toBeLessThanOrEqual(0.5);
    }
    const { at } = clothOf();
    expect([(101_600 - at[0] - width / 2) % width, (127_000 - at[1] - height / 2) % height]).toEqual([0, 0]);
  });

  it("repeats in its pixels at the block's own step", async () => {
    // At 127 dpi a pixel is 200 µm: the block of the shore, 120 x 40 mm, is 600 x 200 pixels.
    const page = artPrint({ tile, colorway: dawn, size: { width: 200, height: 120 }, bleed: 2 });
    const { width, height, data } = decode(await pageToPng(page, { dpi: 127 }));
    expect([width, height]).toEqual([1020, 620]);
    const pixel = (x: number, y: number) => [...data.subarray((y * width + x) * 4, (y * width + x) * 4 + 3)];
    // A side that the edge of the page cuts may be off by 1/256 of a pixel: one step of one channel, at the most.
    const differ = (p: number[], q: number[]) => Math.max(...p.map((value, c) => Math.abs(value - q[c]!)));
    let [most, count] = [0, 0];
    for (let y = 0; y < height - 200; y += 3)
      for (let x = 0; x < width - 600; x += 3) {
        const off = Math.max(differ(pixel(x, y), pixel(x + 600, y)), differ(pixel(x, y), pixel(x, y + 200)));
        most = Math.max(most, off);
        if (off > 0) count++;
      }
    expect(most).toBeLessThanOrEqual(1);
    expect(count).toBeLessThan(20); // of 19 600
    expect(new Set(Array.from({ length: width }, (_, x) => pixel(x, 60).join())).size).toBeGreaterThan(3);
  });

  it("is refused when the motif at its centre does not stay within the safe margin, or there is no such motif", () => {
    const [first] = tile.placements;
    const small = { size: { width: 30, height: 30 }, centre: first!.id } as const;
    expect(clothOf({ ...small, safe: 2 }).scale).toBe(1);
    expect(refusal(() => clothOf({ ...small, safe: 9 })).code).toBe("motif-outside-safe-margin");
    expect(refusal(() => clothOf({ ...small, safe: 16 })).code).toBe("page-too-small");
    expect(refusal(() => clothOf({ centre: "nowhere" })).code).toBe("unknown-motif-id");
    expect(refusal(() => clothOf({ size: "A99" as never })).code).toBe("unknown-print-size");
    expect(refusal(() => clothOf({ bleed: -1 })).code).toBe("length-range");
    expect(refusal(() => artPrint({ tile, colorway: dawn } as never)).code).toBe("missing-option");
  });
});
