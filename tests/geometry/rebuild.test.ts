import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { intersectRings, ringsArea, subtractRings, uniteRings } from "../../src/geometry/clip.ts";
import { flatten } from "../../src/geometry/flatten.ts";
import { areaOf, joinPaths, type Path } from "../../src/geometry/path.ts";
import { rebuildCurves } from "../../src/geometry/rebuild.ts";
import { ellipse } from "../../src/geometry/shapes.ts";
import { rectangle } from "../given.ts";

const rings = (path: Path) => flatten(path, 2);
const curvesOf = (path: Path): number => path.contours.reduce((sum, count) => sum + count, 0);

describe("curves rebuilt along polygons", () => {
  it("are the author's own where nothing is cut", () => {
    const path = ellipse(3, 4, 12, 7);
    const back = rebuildCurves(path, 2, uniteRings(rings(path)));
    expect(back.contours).toEqual([4]);
    expect(new Set(back.points)).toEqual(new Set(path.points));
  });

  it("are cut where outlines cross, and keep the area in closed form", () => {
    // A lens of two circles of radius r whose centres are r apart: r² (2π/3 - √3/2).
    const [a, b] = [ellipse(0, 0, 10), ellipse(10, 0, 10)];
    const lens = rebuildCurves(joinPaths([a, b]), 2, intersectRings(rings(a), rings(b)));
    expect(areaOf(lens) / 1e6 / (100 * ((2 * Math.PI) / 3 - Math.sqrt(3) / 2))).toBeCloseTo(1, 3);
    expect(curvesOf(lens)).toBeLessThanOrEqual(6);
  });

  it("keep straight sides straight", () => {
    const [a, b] = [rectangle(0, 0, 10, 10), rectangle(5, 5, 10, 10)];
    const left = rebuildCurves(joinPaths([a, b]), 2, subtractRings(rings(a), rings(b)));
    expect(areaOf(left) / 1e6).toBeCloseTo(75, 6);
    expect(curvesOf(left)).toBe(6);
  });

  it("stay within the flattening of what the polygon engine found, whatever heap of ellipses", () => {
    const place = fc.integer({ min: -15, max: 15 });
    const one = fc.tuple(place, place, fc.integer({ min: 2, max: 9 }), fc.integer({ min: 2, max: 9 }));
    fc.assert(
      fc.property(fc.array(one, { minLength: 2, maxLength: 9 }), (heap) => {
        const whole = joinPaths(heap.map(([x, y, rx, ry]) => ellipse(x, y, rx, ry)));
        const wanted = uniteRings(rings(whole));
        const back = rebuildCurves(whole, 2, wanted);
        const sides = wanted.reduce((sum, ring) => sum + ring.length / 2, 0);
        expect(Math.abs(ringsArea(rings(back)) - ringsArea(wanted)) / 1e6).toBeLessThan(0.12);
        expect(curvesOf(back)).toBeLessThan(Math.max(12, sides / 2));
        expect(curvesOf(back)).toBeLessThanOrEqual(heap.length * 12);
      }),
      { seed: 7, numRuns: 60 },
    );
  });
});
