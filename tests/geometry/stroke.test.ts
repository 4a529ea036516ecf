import { describe, expect, it } from "vitest";
import { ringsArea } from "../../src/geometry/clip.ts";
import { type StrokeStyle, strokeRing } from "../../src/geometry/stroke.ts";

const style: StrokeStyle = { width: 2000, join: "miter", cap: "butt", miterLimit: 4, tolerance: 1 };
const corner = Float64Array.from([0, 0, 10_000, 0, 10_000, 10_000]);
const area = (line: Float64Array, closed: boolean, more: Partial<StrokeStyle>): number =>
  ringsArea(strokeRing(line, closed, { ...style, ...more }));

describe("the area of a stroke", () => {
  // Two arms of 10 by 2 that share a corner of 1 by 1, plus what the join adds outside it.
  const arms = 2 * 20e6 - 1e6;

  it("depends on its join in closed form", () => {
    expect(area(corner, false, {})).toBeCloseTo(arms + 1e6, -4);
    expect(area(corner, false, { join: "bevel" })).toBeCloseTo(arms + 0.5e6, -4);
    expect(area(corner, false, { join: "round" }) / (arms + (Math.PI / 4) * 1e6)).toBeCloseTo(1, 4);
  });

  it("depends on its caps in closed form, but only where it is open", () => {
    expect(area(corner, false, { cap: "square" })).toBeCloseTo(arms + 5e6, -4);
    expect(area(corner, false, { cap: "round" }) / (arms + 1e6 + Math.PI * 1e6)).toBeCloseTo(1, 3);
    const square = Float64Array.from([0, 0, 10_000, 0, 10_000, 10_000, 0, 10_000]);
    for (const cap of ["butt", "round", "square"] as const)
      expect(area(square, true, { cap })).toBeCloseTo(144e6 - 64e6, -4);
  });

  it("cuts a miter that is longer than its limit", () => {
    const spike = Float64Array.from([0, 0, 10_000, 0, 0, 2000]);
    const [long, short] = [area(spike, false, { miterLimit: 20 }), area(spike, false, { miterLimit: 2 })];
    expect(long - short).toBeGreaterThan(3e6);
  });
});
