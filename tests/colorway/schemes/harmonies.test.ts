import Color from "colorjs.io";
import { describe, expect, it } from "vitest";
import * as own from "../../../src/colorway/schemes/index.ts";
import { makePalette } from "../../../src/colorway/schemes/make-palette.ts";
import { refusal } from "../../given.ts";

const schemes = { ...own };

const hueOf = (ink: string): number => Number(new Color(ink).to("oklch").coords[2]);
const BASE = "#a0707a"; // quiet enough that every hue of its lightness and chroma is within sRGB

describe("a harmony", () => {
  // The distances on the wheel by which the trade knows these names, in degrees (common practice).
  it.each([
    ["complementary", [0, 180]],
    ["analogous", [0, 30, -30]],
    ["triad", [0, 120, 240]],
    ["split", [0, 150, 210]],
    ["tetrad", [0, 90, 180, 270]],
  ] as const)("%s has hues at %j, by colorjs.io", (name, hues) => {
    const inks = Object.values(
      makePalette(schemes[name]({ of: BASE, count: 10 }), { name: "h", seed: "1" }).inks,
    );
    expect(inks).toHaveLength(Math.min(10, 2 + 3 * hues.length));
    expect(inks[1]).toBe(BASE);
    const light = Number(new Color(BASE).to("oklch").coords[0]);
    hues.forEach((away, i) => {
      const ink = inks[1 + i]!;
      const off = (((hueOf(ink) - hueOf(BASE) - away + 540) % 360) + 360) % 360;
      expect(Math.abs(off - 180), ink).toBeLessThan(2.5);
      expect(Math.abs(Number(new Color(ink).to("oklch").coords[0]) - light)).toBeLessThan(0.01);
    });
  });

  it("of a grey is refused: it has no hue, and every ink would be the same", () => {
    const error = refusal(() => makePalette(schemes.triad({ of: "#808080" }), { name: "h", seed: "1" }));
    expect([error.code, error.where]).toEqual(["no-hue", "sprigwright/triad > of"]);
    expect(error.what).toContain("#808080 is a grey");
  });

  it("needs a colour", () => {
    // @ts-expect-error of must be given
    expect(refusal(() => schemes.triad({})).code).toBe("missing-option");
    expect(refusal(() => schemes.triad({ of: "buoy" })).code).toBe("bad-color");
    expect(refusal(() => schemes.triad({ of: "red", count: 99 })).code).toBe("number-range");
  });
});
