import { describe, expect, it } from "vitest";
import { pen } from "../../../src/geometry/pen.ts";
import { ellipse } from "../../../src/geometry/shapes.ts";
import { areaOfPolygons, crossedArea, extent, polygons } from "./measure.ts";

describe("the judges of the primitives", () => {
  it("notice a contour that crosses itself", () => {
    const bow = pen().moveTo(0, 0).lineTo(10, 10).lineTo(10, 0).lineTo(0, 10).path();
    expect(crossedArea(bow)).toBeGreaterThan(10);
    expect(crossedArea(ellipse(3, 4, 10))).toBeLessThan(1e-9);
  });

  it("notice a contour that runs around twice", () => {
    const twice = pen().moveTo(0, 0).lineTo(10, 0).lineTo(5, 9).lineTo(0, 1).lineTo(9, 1).lineTo(5, 8).path();
    expect(crossedArea(twice)).toBeGreaterThan(1);
  });

  it("measure a rectangle", () => {
    const box = pen().moveTo(-3, 0).lineTo(1, 0).lineTo(1, 4).lineTo(-3, 4).path();
    expect(extent(box)).toEqual({ width: 4, height: 4, reach: 5, x: -1, y: 2 });
    expect(areaOfPolygons(polygons(box))).toBeCloseTo(16, 9);
  });
});
