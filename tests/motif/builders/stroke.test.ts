import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import { straight } from "../../../src/motif/builders/chain.ts";
import { stroke } from "../../../src/motif/builders/stroke.ts";
import { crossedArea, extent, points } from "../primitives/measure.ts";

describe("stroke", () => {
  it("of even width is a bar with two half discs", () => {
    const area = areaOf(stroke(straight([0, 0], [30, 40]), [4, 4])) / 1e6;
    expect(Math.abs(area - (50 * 4 + Math.PI * 4))).toBeLessThan(0.01);
  });

  it("that tapers has the area of the trapezium between its ends", () => {
    const area = areaOf(stroke(straight([0, 0], [0, 100]), [6, 2])) / 1e6;
    expect(Math.abs(area - (100 * 4 + (Math.PI / 2) * (9 + 1)))).toBeLessThan(0.1);
  });

  it("reaches half a width beyond its ends", () => {
    const { height, width } = extent(stroke(straight([0, 0], [0, 20]), [3, 1]));
    expect(height).toBeCloseTo(20 + 1.5 + 0.5, 2);
    expect(width).toBeCloseTo(3, 1);
  });

  it("along an arc keeps its distance from the arc", () => {
    const k = 20 * 0.5522847498;
    const ring = stroke([20, 0, 20, k, k, 20, 0, 20], [4, 4]);
    // Away from the round ends every point of the edge is 2 mm from the circle of radius 20.
    const edge = points(ring).filter(([x, y]) => x > 0.5 && y > 0.5);
    for (const [x, y] of edge) expect(Math.abs(Math.abs(Math.hypot(x, y) - 20) - 2)).toBeLessThan(0.02);
    expect(edge.length).toBeGreaterThan(20);
  });

  it("swells to the middle width when three are given", () => {
    expect(extent(stroke(straight([0, 0], [0, 40]), [1, 7, 1])).width).toBeCloseTo(4, 2);
  });

  it("holds where a control lies on its end", () => {
    const path = stroke([0, 0, 0, 0, 5, 10, 5, 10], [1, 1]);
    expect(areaOf(path) / 1e6).toBeCloseTo(Math.hypot(5, 10) + Math.PI / 4, 1);
  });

  it("runs clockwise and does not cross itself, whatever the gentle curve", () => {
    const c = fc.integer({ min: -8, max: 8 });
    fc.assert(
      fc.property(c, c, fc.integer({ min: 4, max: 20 }), fc.integer({ min: 4, max: 20 }), (bx, cx, w, v) => {
        const path = stroke([0, 0, bx, -15, cx, -30, 0, -45], [w / 10, v / 10]);
        expect(areaOf(path)).toBeGreaterThan(0);
        expect(crossedArea(path)).toBeLessThan(1e-6);
      }),
      { seed: 5, numRuns: 40 },
    );
  });
});
