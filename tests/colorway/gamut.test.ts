import Color from "colorjs.io";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gamutOf } from "../../src/colorway/gamut.ts";
import { refusal } from "../given.ts";

describe("gamutOf", () => {
  it("says inside where colorjs.io does, but within half an 8-bit step of the edge", () => {
    let outside = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 98 }),
        fc.integer({ min: 0, max: 350 }),
        fc.integer({ min: 0, max: 359 }),
        (light, much, hue) => {
          const css = `oklch(${light / 100} ${much / 1000} ${hue})`;
          const coords = new Color(css).to("srgb").coords.map(Number);
          const beyond = Math.max(...coords.map((c) => Math.max(-c, c - 1)));
          const { inside, ink, deltaE } = gamutOf(css);
          if (beyond < 0) expect(inside, css).toBe(true);
          if (beyond > 0.5 / 255 + 1e-4) {
            outside++;
            expect(inside, css).toBe(false);
            const theirs = new Color(css).toGamut({ space: "srgb", method: "css" }).to("srgb");
            expect(new Color(ink).deltaE2000(theirs), css).toBeLessThan(1);
          }
          if (inside) expect(deltaE, css).toBeLessThan(1);
        },
      ),
      { seed: 44, numRuns: 400 },
    );
    expect(outside).toBeGreaterThan(100);
  });

  it("takes every ink as it is", () => {
    for (const ink of ["#000000", "#ffffff", "#ff0000", "#0000ff", "#d9803c"])
      expect(gamutOf(ink)).toEqual({ inside: true, ink, deltaE: 0 });
    // CSS Color 4's own OKLCH of sRGB red, a hair outside by its five digits.
    expect(gamutOf("oklch(0.62796 0.25768 29.234)")).toMatchObject({ inside: true, ink: "#ff0000" });
    expect(gamutOf("color(srgb none 0.5 0.5)").inside).toBe(true);
  });

  it("refuses what is no colour", () => expect(refusal(() => gamutOf("sea")).code).toBe("bad-color"));
});
