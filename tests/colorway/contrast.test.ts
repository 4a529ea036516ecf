import Color from "colorjs.io";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contrast } from "../../src/colorway/contrast.ts";
import { refusal } from "../given.ts";

describe("contrast", () => {
  // WCAG 2.2, 1.4.3 and its definition of relative luminance; the greys are the usual test values at its limits.
  it.each([
    ["#000000", "#ffffff", 21],
    ["#767676", "#ffffff", 4.5422],
    ["#777777", "#ffffff", 4.4781],
    ["#595959", "#ffffff", 7.0047],
    ["#949494", "#ffffff", 3.0335],
    ["#ff0000", "#ffffff", 3.9985],
    ["#3f6b4f", "#3f6b4f", 1],
  ])("%s on %s is %s to 1", (a, b, ratio) => {
    expect(contrast(a, b)).toBeCloseTo(ratio, 3);
    expect(contrast(b, a)).toBe(contrast(a, b));
  });

  it("agrees with colorjs.io on 300 random pairs", () => {
    const hex = fc.integer({ min: 0, max: 0xffffff }).map((v) => `#${v.toString(16).padStart(6, "0")}`);
    fc.assert(
      fc.property(hex, hex, (a, b) => {
        // colorjs.io takes luminance from more exact primaries and the corrected threshold 0.04045.
        expect(Math.abs(contrast(a, b) - new Color(a).contrastWCAG21(b))).toBeLessThan(0.01);
      }),
      { seed: 21, numRuns: 300 },
    );
  });

  it("takes any opaque CSS colour, and refuses what is none", () => {
    expect(contrast("black", "white")).toBe(21);
    expect(refusal(() => contrast("black", "whit")).code).toBe("bad-color");
    expect(refusal(() => contrast("transparent", "white")).code).toBe("bad-color");
  });
});
