import fc from "fast-check";
import paper from "paper/dist/paper-core.js";
import { describe, expect, it } from "vitest";
import { movePath, reversePath } from "../../src/geometry/matrix.ts";
import { areaOf, boxOf, emptyPath, isPath, joinPaths, type Path } from "../../src/geometry/path.ts";
import { pathData } from "../../src/geometry/path-text.ts";
import { ellipse, holed, QUARTER } from "../../src/geometry/shapes.ts";
import { polygon, rectangle } from "../given.ts";

const mm2 = (path: Path): number => areaOf(path) / 1e6;

describe("areaOf", () => {
  it("is exact for straight sides: a triangle is half its base times its height", () => {
    expect(mm2(polygon(0, 0, 12, 0, 5, 7))).toBe(42);
    expect(mm2(rectangle(-3, -4, 10, 20))).toBe(200);
  });

  // Green's theorem over (1, 0) (1, k) (k, 1) (0, 1), four times: 2 + 12/5 k - 3/5 k². For k = 4 (√2 - 1) / 3 the
  // radial drift is 0.027253 % (S. Mortensen, "Approximate a circle with cubic Bézier curves"; from memory).
  it("gives the four-cubic circle 2.80e-4 more than a circle, as its closed form says", () => {
    const k = QUARTER;
    const closed = 2 + (12 / 5) * k - (3 / 5) * k * k;
    const r = 50_000; // large, so that whole micrometres round nothing that shows
    expect(mm2(ellipse(0, 0, r)) / (r * r)).toBeCloseTo(closed, 6);
    expect(closed / Math.PI - 1).toBeCloseTo(2.8e-4, 6);
  });

  it("keeps the four-cubic circle between 0 and 2.7253e-4 outside the true one", () => {
    const k = QUARTER;
    let most = 0;
    let least = 1;
    for (let i = 0; i <= 20_000; i++) {
      const t = i / 20_000;
      const s = 1 - t;
      const x = s * s * s + 3 * s * s * t + 3 * s * t * t * k;
      const y = 3 * s * s * t * k + 3 * s * t * t + t * t * t;
      const error = Math.sqrt(x * x + y * y) - 1;
      most = Math.max(most, error);
      least = Math.min(least, error);
    }
    expect(least).toBeGreaterThan(-1e-9);
    expect(most).toBeCloseTo(2.7253e-4, 8);
  });

  it("turns negative with the sense, and takes holes away", () => {
    const disc = ellipse(1, 2, 10);
    expect(areaOf(reversePath(disc))).toBeCloseTo(-areaOf(disc), 3);
    const ring = holed(disc, ellipse(1, 2, 5));
    expect(mm2(ring) / (Math.PI * 75)).toBeCloseTo(1.00028, 4);
    expect(areaOf(emptyPath)).toBe(0);
  });

  it("is that of paper for any cubic contour, and does not depend on where it lies", () => {
    const scope = new paper.PaperScope();
    scope.setup([1, 1] as unknown as paper.Size);
    const um = fc.integer({ min: -50_000, max: 50_000 });
    fc.assert(
      fc.property(fc.array(um, { minLength: 12, maxLength: 36 }), (numbers) => {
        const points = Int32Array.from(numbers.slice(0, Math.floor(numbers.length / 6) * 6));
        const path = { points, contours: [points.length / 6] };
        const theirs = new scope.Path(pathData(path));
        expect(mm2(path)).toBeCloseTo(theirs.area, 6);
        expect(mm2(movePath(path, 90_000_000, -90_000_000))).toBeCloseTo(mm2(path), 8);
      }),
      { seed: 11, numRuns: 200 },
    );
  });
});

describe("paths", () => {
  it("join in order, and one alone is itself", () => {
    const [a, b] = [rectangle(0, 0, 1, 1), ellipse(5, 5, 2)];
    const both = joinPaths([a, emptyPath, b]);
    expect(both.contours).toEqual([4, 4]);
    expect(areaOf(both)).toBeCloseTo(areaOf(a) + areaOf(b), 3);
    expect(joinPaths([a])).toBe(a);
    expect(joinPaths([]).contours).toEqual([]);
  });

  it("have a box around points and controls, an empty one around nothing", () => {
    expect(boxOf(ellipse(10, 20, 3, 4))).toEqual({ minX: 7000, minY: 16_000, maxX: 13_000, maxY: 24_000 });
    const empty = boxOf(emptyPath);
    expect(empty.minX > empty.maxX).toBe(true);
  });

  it.each([
    ["a list of numbers", { points: [0, 0, 1, 1, 2, 2], contours: [1] }],
    ["doubles", { points: new Float64Array(6), contours: [1] }],
    ["half a curve", { points: new Int32Array(8), contours: [1] }],
    ["fewer curves than points", { points: new Int32Array(12), contours: [1] }],
    ["a contour of no curves", { points: new Int32Array(6), contours: [0, 1] }],
    ["a contour of NaN curves", { points: new Int32Array(6), contours: [Number.NaN] }],
    ["a point beyond 100 m", { points: Int32Array.of(0, 0, 0, 0, 100_000_001, 0), contours: [1] }],
    ["nothing", null],
    ["text", "M0 0"],
  ])("are not taken from outside as %s", (_, value) => {
    expect(isPath(value)).toBe(false);
  });

  it("are taken from outside when they are sound", () => {
    expect(isPath(ellipse(0, 0, 3))).toBe(true);
    expect(isPath(emptyPath)).toBe(true);
  });
});
