import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SprigwrightError } from "../../../src/errors/error.ts";
import { type RasterizeOptions, rasterize } from "../../../src/output/png/rasterize.ts";
import { nearestWhole } from "../../../src/output/png/whole-pixels.ts";
import { isWholePixels } from "../../../src/units/pixels.ts";
import { circle, meadow, tileOf } from "./tiles.ts";

const tile = tileOf({ width: 100_000, height: 80_000 }, [{ role: "dot", path: circle(0, 0, 9000) }]);

async function refusal(options: unknown): Promise<SprigwrightError> {
  const error = await rasterize(tile, options as RasterizeOptions).catch((e: unknown) => e);
  expect(error).toBeInstanceOf(SprigwrightError);
  return error as SprigwrightError;
}

describe("rasterize refuses", () => {
  it.each([
    [{ dpi: 0 }, "number-range", "0 dpi is outside 1 dpi to 2400 dpi"],
    [{ dpi: 2401 }, "number-range", "2401 dpi"],
    [{ dpi: 72.5 }, "wrong-type", "72.5 is not a whole number"],
    [{ dpi: Number.NaN }, "wrong-type", "NaN"],
    [{ dpi: "300" }, "wrong-type", '"300"'],
    [{ width: 0 }, "number-range", "0 pixels is outside 1 pixels to 65535 pixels"],
    [{ width: 1e9 }, "number-range", "1000000000 pixels"],
    [{ width: Number.POSITIVE_INFINITY }, "wrong-type", "Infinity"],
    [{ width: 32_769 }, "raster-size", "the picture would be 32769 x 26215 pixels"],
    [{ width: 65_535, cut: { across: 1, down: 2 } }, "raster-size", "a block of it would be 65535 x 52428"],
    [{ width: 3000, cut: { across: 1, down: 28 } }, "raster-size", "3000 x 67200 pixels"],
    [{ dpi: 254, cut: { width: "5m", height: 10 } }, "wrong-type", '"5m" is not a length'],
    [{ dpi: 254, cut: { width: 0, height: 10 } }, "length-range", "a cut of no size"],
    [{ dpi: 254, cut: { width: -4, height: 10 } }, "length-range", "a cut of no size"],
    [{ dpi: 254, cut: { width: 10 } }, "missing-option", "nothing was given"],
    [{ dpi: 254, cut: { width: 10, height: 10, depth: 2 } }, "unknown-option", '"depth"'],
    [{ dpi: 254, cut: "unti" }, "unknown-cut", '"unti"'],
    [{ width: 10, color: "truecolour" }, "unknown-kind-of-color", '"truecolour"'],
    [{ width: 32_000 }, "raster-size", "32000 x 25600 pixels"],
    [{ width: 100, cut: { across: 0, down: 1 } }, "number-range", "0 is outside 1"],
    [{ width: 100, cut: { across: 1.5, down: 1 } }, "wrong-type", "1.5"],
    [{ width: 100, cut: 3 }, "wrong-type", '3 is not "block"'],
    [{ width: 10, dpi: 10 }, "raster-size", "both a dpi and a width"],
    [{}, "raster-size", "neither a dpi nor a width"],
    [undefined, "wrong-type", "undefined is not options"],
    [{ width: 10, scale: 2 }, "unknown-option", '"scale"'],
    [{ witdh: 10 }, "unknown-option", '"witdh"'],
  ])("%o", async (options, code, what) => {
    const error = await refusal(options);
    expect(error.code).toBe(code);
    expect(error.what).toContain(what);
    expect(error.where).toMatch(/^by-hand > rasterize/);
  });

  it("a size that is not whole pixels, and names the nearest that are", async () => {
    const error = await refusal({ dpi: 300 });
    expect(error.code).toBe("not-whole-pixels");
    expect(error.message).toContain("100 x 80 mm is not a whole number of pixels at 300 dpi");
    expect(error.fix).toContain("100.076 x 80.01 mm; 99.822 x 79.756 mm");
    expect(error.fix).toMatch(/^it is one at 254 or 381 dpi; /);
  });

  it("nothing whose nearest sizes it then would refuse again", () => {
    const um = fc.integer({ min: 1000, max: 2_000_000 });
    fc.assert(
      fc.property(um, um, fc.integer({ min: 1, max: 2400 }), (width, height, dpi) => {
        for (const text of nearestWhole({ width, height }, dpi, 2400).sizes) {
          const [w, h] = /^([\d.]+) x ([\d.]+) mm$/
            .exec(text)!
            .slice(1)
            .map((mm) => Math.round(Number(mm) * 1000));
          expect(isWholePixels(w!, dpi) && isWholePixels(h!, dpi) && w! > 0 && h! > 0).toBe(true);
        }
      }),
      { seed: 9, numRuns: 200 },
    );
  });

  it("a colorway that lacks a role", async () => {
    const raster = await rasterize(tile, { width: 10 });
    expect(() => raster.png({ name: "dusk", inks: { ground: "#000000" } })).toThrow(/no ink for "dot"/);
  });

  it("more than 64 roles, and no fewer", async () => {
    const many = (n: number) =>
      tileOf(
        { width: 9000, height: 9000 },
        Array.from({ length: n }, (_, i) => ({ role: `r${i}`, path: circle(i * 100, 0, 900) })),
      );
    await expect(rasterize(many(64), { width: 9 })).rejects.toThrow(/65 roles/);
    expect((await rasterize(many(63), { width: 9 })).width).toBe(9);
  });

  it("a shape that goes round the block beyond reason", async () => {
    const long = tileOf({ width: 10, height: 10 }, [{ role: "dot", path: circle(0, 0, 1_000_000) }]);
    await expect(rasterize(long, { width: 1000 })).rejects.toThrow(/goes round a block/);
  });
});

describe("rasterize", () => {
  it("reports progress, never backwards, up to 1", async () => {
    const seen: number[] = [];
    await rasterize(meadow(100_000, 3, 1), { width: 1500, onProgress: (done) => seen.push(done) });
    expect(seen.length).toBeGreaterThan(5);
    expect(seen).toEqual([...seen].sort((a, b) => a - b));
    expect(seen.at(-1)).toBe(1);
  });

  it("stops when called off, before and during the work, with the reason given", async () => {
    const reason = new Error("changed my mind");
    await expect(rasterize(tile, { width: 10, signal: AbortSignal.abort(reason) })).rejects.toBe(reason);
    const control = new AbortController();
    const stop = (done: number): void => {
      if (done > 0.3) control.abort(reason);
    };
    const work = rasterize(meadow(100_000, 3, 1), { width: 1500, signal: control.signal, onProgress: stop });
    await expect(work).rejects.toBe(reason);
  });

  it("takes the smallest picture", async () => {
    const raster = await rasterize(tile, { width: 1 });
    expect([raster.width, raster.height]).toEqual([1, 1]);
  });

  it("gives a frozen value", async () => {
    expect(Object.isFrozen(await rasterize(tile, { width: 4 }))).toBe(true);
  });
});
