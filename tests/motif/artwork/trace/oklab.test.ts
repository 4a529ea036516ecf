import Color from "colorjs.io";
import { converter } from "culori";
import { describe, expect, it } from "vitest";
import { cubeRoot, oklabOf } from "../../../../src/motif/artwork/trace/oklab.ts";

const byCulori = converter("oklab");

describe("oklabOf", () => {
  it("equals culori and colorjs.io on a grid of colours", () => {
    for (let red = 0; red < 256; red += 51)
      for (let green = 0; green < 256; green += 51)
        for (let blue = 0; blue < 256; blue += 51) {
          const own = oklabOf(red, green, blue);
          const rgb = { mode: "rgb", r: red / 255, g: green / 255, b: blue / 255 } as const;
          const { l, a, b } = byCulori(rgb);
          [l, a, b].forEach((value, i) => {
            expect(own[i]).toBeCloseTo(value, 6);
          });
          // Its matrix has more digits: Ottosson's published ones agree to four places.
          new Color("srgb", [rgb.r, rgb.g, rgb.b]).to("oklab").coords.forEach((value, i) => {
            expect(own[i]).toBeCloseTo(value!, 3);
          });
        }
  });

  it("takes the square's cube root of a cube", () => {
    for (const x of [1e-7, 0.001, 0.2, 0.5, 0.999, 1]) expect(cubeRoot(x * x * x)).toBeCloseTo(x, 14);
    expect(cubeRoot(0)).toBe(0);
  });
});
