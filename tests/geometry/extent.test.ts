import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { extentOf } from "../../src/geometry/extent.ts";
import { flatten } from "../../src/geometry/flatten.ts";
import { ellipse } from "../../src/geometry/shapes.ts";
import { polygon } from "../given.ts";

describe("the extent of a path", () => {
  it("of an ellipse is its diameters, though its controls lie farther out nowhere", () => {
    expect(extentOf(ellipse(10, -4, 7, 3), 0)).toEqual([3000, 17_000]);
    expect(extentOf(ellipse(10, -4, 7, 3), 1)).toEqual([-7000, -1000]);
  });

  it("of a bow is where the curve turns back, not its controls", () => {
    // y rises from 0 to 3/4 of its controls' height and back.
    const bow = {
      points: Int32Array.of(0, 0, 0, 8000, 9000, 8000, 9000, 0, 6000, 0, 3000, 0),
      contours: [2],
    };
    expect(extentOf(bow, 1)).toEqual([0, 6000]);
    expect(extentOf(bow, 0)).toEqual([0, 9000]);
  });

  it("of a polygon is that of its corners", () => {
    expect(extentOf(polygon(1, 2, 8, 3, 5, 11), 1)).toEqual([2000, 11_000]);
  });

  it("agrees with finely flattened curves", () => {
    const um = fc.integer({ min: -50_000, max: 50_000 });
    fc.assert(
      fc.property(fc.array(um, { minLength: 18, maxLength: 18 }), fc.constantFrom(0, 1), (points, axis) => {
        const path = { points: Int32Array.from(points), contours: [3] };
        const along = flatten(path, 1).flatMap((ring) => [...ring].filter((_, i) => i % 2 === axis));
        const [least, most] = extentOf(path, axis as 0 | 1);
        // A chord lies within a µm of its curve, so its end may miss the summit by that much.
        expect(least).toBeLessThanOrEqual(Math.min(...along) + 1e-6);
        expect(most).toBeGreaterThanOrEqual(Math.max(...along) - 1e-6);
        expect(Math.min(...along) - least).toBeLessThan(2);
        expect(most - Math.max(...along)).toBeLessThan(2);
      }),
      { seed: 11, numRuns: 200 },
    );
  });
});
