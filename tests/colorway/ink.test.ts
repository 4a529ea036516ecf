import Color from "colorjs.io";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inkBytes, readInk } from "../../src/colorway/ink.ts";
import { refusal } from "../given.ts";

const ink = (color: string): string => readInk(color, "x");

describe("readInk", () => {
  it.each([
    // CSS Color 4, 6.1: named colours.
    ["tomato", "#ff6347"],
    ["RebeccaPurple", "#663399"],
    ["goldenrod", "#daa520"],
    ["darkseagreen", "#8fbc8f"],
    // CSS Color 4, 5.2: hex notation, 4.2: rgb(), in both spellings.
    ["#0f0", "#00ff00"],
    ["#D9803C", "#d9803c"],
    ["#d9803cff", "#d9803c"],
    ["rgb(217 128 60)", "#d9803c"],
    ["rgb(217, 128, 60)", "#d9803c"],
    ["rgb(100% 0% 50%)", "#ff0080"],
    // CSS Color 4, 7 and 8: hsl() and hwb(); hsl(120 100% 25%) is the standard's green.
    ["hsl(120 100% 25%)", "#008000"],
    ["hsl(120deg, 75%, 25%)", "#107010"],
    ["hwb(90 10% 10%)", "#80e61a"],
    ["hwb(0 100% 0%)", "#ffffff"],
    // CSS Color 4, worked examples of the sample code and text; values from memory.
    ["oklch(0.44027 0.16030 303.373)", "#663399"],
    ["oklab(0.62796 0.22486 0.12585)", "#ff0000"],
    ["lab(46.2775% -47.5621 48.5837)", "#008000"],
    ["lch(46.2775% 67.9892 134.3912)", "#008000"],
    ["color(srgb 0.5 0.5 0.5)", "#808080"],
    ["color(display-p3 0.21604 0.49418 0.13151)", "#008000"],
    ["color(xyz-d65 0.95047 1 1.08906)", "#ffffff"],
    ["oklch(0.7 none 50)", "#9e9e9e"],
  ])("%s is %s", (color, hex) => {
    expect(ink(color)).toBe(hex);
  });

  it("agrees with colorjs.io on 300 random colours inside sRGB, to one step of 255", () => {
    let compared = 0;
    fc.assert(
      fc.property(
        fc.constantFrom("oklch", "lab", "hsl", "hwb"),
        fc.integer({ min: 5, max: 95 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 359 }),
        (space, light, much, hue) => {
          const css = {
            oklch: `oklch(${light / 100} ${much / 1000} ${hue})`,
            lab: `lab(${light} ${much - 50} ${hue / 4 - 45})`,
            hsl: `hsl(${hue} ${much}% ${light}%)`,
            hwb: `hwb(${hue} ${light / 2}% ${much / 2}%)`,
          }[space]!;
          const theirs = new Color(css).to("srgb");
          if (!theirs.inGamut()) return;
          compared++;
          const want = theirs.coords.map((c) => Math.round(Number(c) * 255));
          inkBytes(ink(css)).forEach((byte, i) => {
            if (Math.abs(byte - want[i]!) > 1) throw new Error(`${css}: ${ink(css)} against ${want}`);
          });
        },
      ),
      { seed: 19, numRuns: 400 },
    );
    expect(compared).toBeGreaterThan(200);
  });

  // CSS Color 4, 13.2: chroma is lowered in OKLCH, so lightness and hue stay.
  it("brings what is outside sRGB in, keeping its lightness and hue, as colorjs.io's css method does", () => {
    expect(ink("oklch(0.7 0.4 150)")).toBe("#00c248");
    for (const css of [
      "oklch(0.6 0.37 30)",
      "color(display-p3 0 1 0)",
      "lab(60 120 -80)",
      "color(rec2020 1 0 0)",
    ]) {
      const [ours, theirs] = [new Color(ink(css)).to("oklch"), new Color(css).to("oklch")];
      expect(Math.abs(Number(ours.coords[0]) - Number(theirs.coords[0]))).toBeLessThan(0.025);
      const turn = Math.abs(Number(ours.coords[2]) - Number(theirs.coords[2]));
      expect(Math.min(turn, 360 - turn)).toBeLessThan(6);
      expect(Number(ours.coords[1])).toBeLessThan(Number(theirs.coords[1]));
      expect(ink(css)).toBe(
        new Color(css)
          .toGamut({ space: "srgb", method: "css" })
          .to("srgb")
          .toString({ format: "hex", collapse: false }),
      );
    }
    expect(ink("oklch(2 0.1 30)")).toBe("#ffffff");
    expect(ink("oklch(-1 0.1 30)")).toBe("#000000");
  });

  it("is its own ink when read again", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (value) => {
        const hex = `#${value.toString(16).padStart(6, "0")}`;
        expect(ink(hex)).toBe(hex);
        const [r, g, b] = inkBytes(hex);
        expect((r << 16) + (g << 8) + b).toBe(value);
      }),
      { seed: 20 },
    );
  });

  it.each([
    "leef",
    "",
    "#12",
    "#ggg",
    "facade",
    "ff8800",
    "fff",
    "rgb(1 2)",
    "url(x)",
    "var(--x)",
    "currentcolor",
    "inherit",
  ])("refuses %j, which is no CSS colour", (color) => {
    const error = refusal(() => readInk(color, "shore > colorways > dawn > leaf"));
    expect(error.message).toBe(
      `shore > colorways > dawn > leaf: ${JSON.stringify(color)} is not a CSS colour\n` +
        '  fix: give an opaque CSS colour such as "#d9803c", "tomato" or "oklch(0.7 0.12 50)" [bad-color]',
    );
  });

  it.each(["color(srgb 1e308 -1e308 1e308)", "oklch(0.5 1e300 40)", "rgb(1e9 0 0)"])(
    "refuses %s: sums with it run over",
    (color) => {
      expect(refusal(() => readInk(color, "x")).what).toMatch(/ is beyond all colours$/);
    },
  );

  it.each([0xff8800, null, undefined, {}, ["red"], "x".repeat(1e6)])("refuses %s", (color) => {
    expect(refusal(() => readInk(color, "x")).code).toBe("bad-color");
  });

  it.each([
    "transparent",
    "#0008",
    "#11223344",
    "rgb(0 0 0 / 50%)",
    "oklch(0.7 0.1 50 / 0.99)",
    "hsla(0, 0%, 0%, 0)",
  ])("refuses %s, since ink is opaque", (color) => {
    expect(refusal(() => readInk(color, "x")).what).toMatch(/ is not opaque$/);
  });
});
