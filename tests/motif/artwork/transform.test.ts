import { describe, expect, it } from "vitest";
import { readOrigin, readTransform } from "../../../src/motif/artwork/transform.ts";
import { viewportOf } from "../../../src/motif/artwork/viewport.ts";
import { refusal } from "../../given.ts";
import { likeness, redrawn, svgOf } from "./picture.ts";

const moved = (text: string, x: number, y: number): number[] => {
  const [a, b, c, d, e, f] = readTransform(text, "<g>");
  return [a * x + c * y + e, b * x + d * y + f].map((v) => Math.round(v * 1e9) / 1e9 + 0);
};

describe("a transform attribute", () => {
  // Points by hand from the definitions in CSS Transforms 1, section 13.
  it("does each function as SVG defines it", () => {
    expect(moved("translate(3)", 1, 2)).toEqual([4, 2]);
    expect(moved("translate(3,-1)", 1, 2)).toEqual([4, 1]);
    expect(moved("scale(2)", 1, 2)).toEqual([2, 4]);
    expect(moved("scale(2 -1)", 1, 2)).toEqual([2, -2]);
    expect(moved("rotate(90)", 1, 0)).toEqual([0, 1]);
    expect(moved("rotate(-90, 1, 1)", 2, 1)).toEqual([1, 0]);
    expect(moved("skewX(45)", 1, 2)).toEqual([3, 2]);
    expect(moved("skewY(45)", 1, 2)).toEqual([1, 3]);
    expect(moved("matrix(1 2 3 4 5 6)", 1, 1)).toEqual([9, 12]);
  });

  it("does the last function of a list first", () => {
    expect(moved("translate(10 0) scale(2)", 1, 1)).toEqual([12, 2]);
    expect(moved("scale(2),translate(10 0)", 1, 1)).toEqual([22, 2]);
  });

  it("is nothing when it is empty or absent", () => {
    expect(readTransform(null, "<g>")).toEqual([1, 0, 0, 1, 0, 0]);
    expect(readTransform(" ", "<g>")).toEqual([1, 0, 0, 1, 0, 0]);
  });

  it("is refused with its element when it cannot be read", () => {
    for (const text of [
      "spin(3)",
      "translate(a)",
      "scale()",
      "matrix(1 2 3)",
      "rotate(1",
      "toString(1)",
      "rotate(1,2,3,4)",
    ])
      expect(refusal(() => readTransform(text, "<g> on line 2"))).toMatchObject({
        code: "bad-transform",
        where: "<g> on line 2 > transform",
      });
  });
});

describe("a transform about an origin", () => {
  const rect = (attributes: string): string =>
    `<circle r="1" fill="#123"/><rect x="10" y="12" width="14" height="6" fill="#c33" ${attributes}/>`;
  const ground = '<rect width="40" height="40" fill="#7fa8b8"/>';

  // resvg draws the same turn, written with its middle (CSS Transforms 1, section 6): it does not read the origin itself.
  it.each([
    ["17 15", "17 15"],
    ["17px 15px", "17 15"],
    ["50% 50%", "20 20"],
    ["40% 10px", "16 10"],
    ["right top", "40 0"],
  ])("lands where it should: %s", (origin, middle) => {
    const given = rect(`style="transform:rotate(30deg);transform-origin:${origin}"`);
    const wanted = svgOf(ground + rect(`transform="rotate(30 ${middle})"`), 40);
    expect(likeness(wanted, redrawn(svgOf(given, 40), ground, 40))).toBeGreaterThan(44);
    expect(
      redrawn(svgOf(rect(`transform="rotate(30)" transform-origin="${origin}"`), 40), ground, 40),
    ).toEqual(redrawn(svgOf(given, 40), ground, 40));
  });

  it("may name sides of the page, in either order", () => {
    const page = viewportOf(40, 20);
    expect(readOrigin("center", page)).toEqual([20, 10]);
    expect(readOrigin("right", page)).toEqual([40, 10]);
    expect(readOrigin("top", page)).toEqual([20, 0]);
    expect(readOrigin("bottom left", page)).toEqual([0, 20]);
    expect(readOrigin("25% 5px", page)).toEqual([10, 5]);
    expect(readOrigin("calc(3px + 1%)", page)).toBeUndefined();
  });
});
