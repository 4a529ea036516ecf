import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pointSideSquared } from "../../src/geometry/distance.ts";
import { flatten, isStraight, ringArea } from "../../src/geometry/flatten.ts";
import { areaOf } from "../../src/geometry/path.ts";
import { ellipse } from "../../src/geometry/shapes.ts";
import { polygon } from "../given.ts";

const um = fc.integer({ min: -60_000, max: 60_000 });

describe("flatten", () => {
  it("stays within the tolerance of the curve, however wild (200 points of each curve tried)", () => {
    fc.assert(
      fc.property(
        fc.array(um, { minLength: 6, maxLength: 6 }),
        fc.constantFrom(1, 2, 20, 300),
        (p, tolerance) => {
          const points = Int32Array.from(p);
          const ring = flatten({ points, contours: [1] }, tolerance)[0]!;
          const [x0, y0, x1, y1, x2, y2] = p as [number, number, number, number, number, number];
          for (let i = 0; i <= 200; i++) {
            const t = i / 200;
            const s = 1 - t;
            // One curve alone: it ends where it starts.
            const x = (s * s * s + t * t * t) * x0 + 3 * s * s * t * x1 + 3 * s * t * t * x2;
            const y = (s * s * s + t * t * t) * y0 + 3 * s * s * t * y1 + 3 * s * t * t * y2;
            // The side for this stretch of the curve is enough: sides are cut evenly along the parameter.
            const k = 2 * Math.min(Math.floor((t * ring.length) / 2), ring.length / 2 - 1);
            const j = (k + 2) % ring.length;
            const nearest = pointSideSquared(x, y, ring[k]!, ring[k + 1]!, ring[j]!, ring[j + 1]!);
            if (nearest > tolerance * tolerance * 1.000001)
              throw new Error(`${Math.sqrt(nearest)} µm away at ${t}`);
          }
        },
      ),
      { seed: 13, numRuns: 150 },
    );
  });

  it("cuts a circle about as rarely as its bend allows: r = 10 mm at 2 µm takes under 100 sides", () => {
    // A chord of a circle stays within e when its angle is at most 2 acos(1 - e/r): 157 sides at 2 µm would be 314 at 0.5.
    const sides = (tolerance: number): number => flatten(ellipse(0, 0, 10), tolerance)[0]!.length / 2;
    expect(sides(2)).toBeGreaterThan(4 * 36);
    expect(sides(2)).toBeLessThan(4 * 60);
    expect(sides(8)).toBeLessThan(sides(2));
  });

  it("leaves straight sides as they are, and knows them", () => {
    const square = polygon(0, 0, 5, 0, 5, 5, 0, 5);
    expect([...flatten(square, 1)[0]!]).toEqual([0, 0, 5000, 0, 5000, 5000, 0, 5000]);
    expect(isStraight(square.points, 0, 6)).toBe(true);
    expect(isStraight(ellipse(0, 0, 5).points, 0, 6)).toBe(false);
  });

  it("has an area below the curve's by less than the tolerance along its outline", () => {
    const disc = ellipse(0, 0, 10);
    const short = areaOf(disc) - ringArea(flatten(disc, 2)[0]!);
    expect(short).toBeGreaterThan(0);
    expect(short).toBeLessThan(2 * 2 * Math.PI * 10_000);
  });

  it("bounds its own work for a curve of any size and tolerance", () => {
    const huge = { points: Int32Array.of(0, 0, 1e8, 1e8, -1e8, 1e8), contours: [1] };
    expect(flatten(huge, 0.001)[0]!.length / 2).toBeLessThanOrEqual(1024);
  });
});

describe("ringArea", () => {
  it("is the shoelace formula: a unit square run clockwise on the page is 1", () => {
    expect(ringArea(Float64Array.of(0, 0, 1, 0, 1, 1, 0, 1))).toBe(1);
    expect(ringArea(Float64Array.of(0, 1, 1, 1, 1, 0, 0, 0))).toBe(-1);
    expect(ringArea(new Float64Array(0))).toBe(0);
  });
});
