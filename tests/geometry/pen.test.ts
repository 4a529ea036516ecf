import { describe, expect, it } from "vitest";
import { areaOf } from "../../src/geometry/path.ts";
import { pen } from "../../src/geometry/pen.ts";
import { refusal } from "../given.ts";

describe("a pen", () => {
  it("rounds to whole micrometres and closes what is open", () => {
    const path = pen().moveTo(0, 0).lineTo(1.0004, 0).lineTo(1, 2.0006).path();
    expect(path.contours).toEqual([3]);
    expect([...path.points.slice(6, 8)]).toEqual([1000, 0]);
    expect([...path.points.slice(12, 14)]).toEqual([1000, 2001]);
    expect(areaOf(path)).toBeCloseTo(0.5 * 1000 * 2001, 6);
  });

  it("keeps straight sides straight: their controls lie on their ends", () => {
    const { points } = pen().moveTo(0, 0).lineTo(4, 0).lineTo(4, 4).close().path();
    expect([...points.slice(0, 8)]).toEqual([0, 0, 0, 0, 4000, 0, 4000, 0]);
  });

  it("starts a contour at each moveTo, and draws nothing for a point alone or a side of no length", () => {
    const path = pen().moveTo(9, 9).moveTo(0, 0).lineTo(0, 0).lineTo(1, 0).lineTo(1, 1).moveTo(5, 5).path();
    expect(path.contours).toEqual([3]);
  });

  it("does not change what it gave before", () => {
    const draw = pen().moveTo(0, 0).lineTo(1, 0).lineTo(1, 1);
    const first = draw.path();
    draw.moveTo(5, 5).lineTo(6, 5).lineTo(6, 6);
    expect(draw.path().contours).toEqual([3, 3]);
    expect(first.contours).toEqual([3]);
  });

  it.each([
    Number.NaN,
    Infinity,
    -Infinity,
    100_001,
    "3" as unknown as number,
    undefined as unknown as number,
  ])("refuses the coordinate %s", (x) => {
    for (const work of [
      () => pen().moveTo(x, 0),
      () => pen().moveTo(0, 0).lineTo(0, x),
      () => pen().moveTo(0, 0).curveTo(0, 0, 0, x, 1, 1),
    ]) {
      const error = refusal(work);
      expect(error.code).toBe("bad-shape");
      expect(error.what).toMatch(/^a coordinate is .*, not a number of mm from -100000 to 100000$/);
      expect(error.fix).toBe("return closed paths with finite coordinates in mm, one entry for each part");
    }
  });

  it("does not draw before it is put down", () => {
    for (const work of [
      () => pen().lineTo(0, 0),
      () => pen().lineTo(3, 1),
      () => pen().curveTo(0, 0, 0, 0, 1, 1),
    ])
      expect(refusal(work).what).toBe("a side was drawn before moveTo");
    expect(refusal(() => pen().moveTo(0, 0).lineTo(1, 1).close().lineTo(2, 2)).code).toBe("bad-shape");
  });
});
