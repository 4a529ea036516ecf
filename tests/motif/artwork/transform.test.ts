import { describe, expect, it } from "vitest";
import { readTransform } from "../../../src/motif/artwork/transform.ts";
import { refusal } from "../../given.ts";

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
