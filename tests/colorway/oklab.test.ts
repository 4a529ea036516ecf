import Color from "colorjs.io";
import { converter } from "culori/fn";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { oklchOf } from "../../src/colorway/schemes/oklch.ts";
import { prepareColors } from "../../src/motif/artwork/color.ts";
import { oklabOf } from "../../src/motif/artwork/trace/oklab.ts";

const hex = fc.integer({ min: 0, max: 0xffffff }).map((v) => `#${v.toString(16).padStart(6, "0")}`);

describe("OKLab", () => {
  // B. Ottosson, "A perceptual color space for image processing", 2020: his table of XYZ (D65) and OKLab, to 3 digits.
  it.each([
    [0.95, 1, 1.089, 1, 0, 0],
    [1, 0, 0, 0.45, 1.236, -0.019],
    [0, 1, 0, 0.922, -0.671, 0.263],
    [0, 0, 1, 0.153, -1.415, -0.449],
  ])("of XYZ %s %s %s is %s %s %s", (x, y, z, l, a, b) => {
    prepareColors();
    const found = converter("oklab")({ mode: "xyz65", x, y, z });
    expect(Math.abs(found.l - l)).toBeLessThan(6e-4);
    expect(Math.abs(found.a - a)).toBeLessThan(6e-4);
    expect(Math.abs(found.b - b)).toBeLessThan(6e-4);
  });
});

describe("OKLCH of an ink", () => {
  // CSS Color 4, examples and sample values for these named colours; written down from memory, and as colorjs.io has them.
  it.each([
    ["#ff0000", 0.62796, 0.25768, 29.234],
    ["#00ff00", 0.86644, 0.29483, 142.495],
    ["#0000ff", 0.45201, 0.31321, 264.052],
    ["#663399", 0.44027, 0.1603, 303.373],
    ["#ffffff", 1, 0, 0],
  ])("%s is %s %s %s", (ink, l, c, h) => {
    const found = oklchOf(ink);
    expect(found.lightness).toBeCloseTo(l, 4);
    expect(found.chroma).toBeCloseTo(c, 4);
    if (c > 0) expect(found.hue * 360).toBeCloseTo(h, 2);
  });

  it("is colorjs.io's on 1000 random colours, and so is the library's own exact OKLab", () => {
    fc.assert(
      fc.property(hex, (ink) => {
        const [l, c, h] = new Color(ink).to("oklch").coords.map(Number) as [number, number, number];
        const own = oklchOf(ink);
        expect(Math.abs(own.lightness - l)).toBeLessThan(1e-4);
        expect(Math.abs(own.chroma - c)).toBeLessThan(1e-4);
        if (c > 0.01) expect(Math.abs(((own.hue * 360 - h + 540) % 360) - 180)).toBeLessThan(0.1);
        const [lightness, a, b] = new Color(ink).to("oklab").coords.map(Number) as [number, number, number];
        const value = Number.parseInt(ink.slice(1), 16);
        const exact = oklabOf(value >> 16, (value >> 8) & 255, value & 255);
        expect(Math.abs(exact[0] - lightness)).toBeLessThan(1e-4);
        expect(Math.abs(exact[1] - a)).toBeLessThan(1e-4);
        expect(Math.abs(exact[2] - b)).toBeLessThan(1e-4);
      }),
      { seed: 33, numRuns: 1000 },
    );
  });
});
