import fc from "fast-check";
import { expect, test } from "vitest";
import { contains, distanceBetween, isCloser } from "../../src/geometry/distance.ts";
import { outlineOfRings, transformOutline } from "../../src/geometry/outline.ts";
import { enclosingCircle } from "../../src/geometry/reach.ts";
import { cosTurns, sinTurns } from "../../src/seed/trigonometry.ts";
import { jstsDistance, polygonOf } from "./jsts.ts";

/** A ring around (x, y) whose corners lie at the given radii: simple, mostly not convex. */
const rounded = (x: number, y: number, radii: readonly number[]): number[] =>
  radii.flatMap((r, k) => [x + r * cosTurns(k / radii.length), y + r * sinTurns(k / radii.length)]);

const ring = fc
  .tuple(
    fc.integer({ min: -60, max: 60 }),
    fc.integer({ min: -60, max: 60 }),
    fc.array(fc.integer({ min: 2, max: 50 }), { minLength: 3, maxLength: 40 }),
  )
  .map(([x, y, radii]) => rounded(x, y, radii));

const box = (x: number, y: number, w: number, h: number): number[] => [
  x,
  y,
  x + w,
  y,
  x + w,
  y + h,
  x,
  y + h,
];

test("the distance of random polygons is that of JSTS, crossing and nested ones included", () => {
  let overlapping = 0;
  fc.assert(
    fc.property(ring, ring, (a, b) => {
      const expected = jstsDistance(polygonOf([a]), polygonOf([b]));
      if (expected === 0) overlapping++;
      const found = distanceBetween(outlineOfRings([a]), outlineOfRings([b]));
      expect(Math.abs(found - expected)).toBeLessThan(1e-9);
    }),
    { seed: 7, numRuns: 1500 },
  );
  expect(overlapping).toBeGreaterThan(200);
  expect(overlapping).toBeLessThan(1300);
});

test("closeness agrees with JSTS just above and just below the distance, wherever the second is moved", () => {
  const shift = fc.integer({ min: -200, max: 200 });
  fc.assert(
    fc.property(ring, ring, shift, shift, (a, b, dx, dy) => {
      const moved = b.map((v, k) => v + (k % 2 === 0 ? dx : dy));
      const expected = jstsDistance(polygonOf([a]), polygonOf([moved]));
      const [one, two] = [outlineOfRings([a]), outlineOfRings([b])];
      expect(isCloser(one, two, dx, dy, expected + 1e-6)).toBe(true);
      if (expected > 1e-6) expect(isCloser(one, two, dx, dy, expected - 1e-6)).toBe(false);
    }),
    { seed: 8, numRuns: 1000 },
  );
});

test("long sides that cross far from their ends are seen", () => {
  const across = outlineOfRings([box(-1000, 0, 2000, 1)]);
  const down = outlineOfRings([box(0, -1000, 1, 2000)]);
  expect(distanceBetween(across, down)).toBe(0);
  expect(isCloser(across, down, 0, 0, 0.001)).toBe(true);
});

test("outlines that touch are 0 apart, and one within another is as good as crossing it", () => {
  const square = outlineOfRings([box(0, 0, 100, 100)]);
  expect(distanceBetween(square, outlineOfRings([box(100, 20, 10, 10)]))).toBe(0);
  expect(distanceBetween(square, outlineOfRings([box(100, 100, 10, 10)]))).toBe(0);
  const small = outlineOfRings([box(40, 40, 5, 5)]);
  expect(distanceBetween(square, small)).toBe(0);
  expect(distanceBetween(small, square)).toBe(0);
  expect(isCloser(small, square, 0, 0, 1)).toBe(true);
});

test("a shape in the hole of another is as far from it as from the rim", () => {
  const frame = [box(0, 0, 100, 100), [10, 10, 10, 90, 90, 90, 90, 10]];
  const inner = box(40, 45, 20, 20);
  expect(distanceBetween(outlineOfRings(frame), outlineOfRings([inner]))).toBe(25);
  expect(jstsDistance(polygonOf(frame), polygonOf([inner]))).toBe(25);
  expect(contains(outlineOfRings(frame), 50, 50)).toBe(false);
  expect(contains(outlineOfRings(frame), 5, 50)).toBe(true);
});

test("nothing is infinitely far from anything", () => {
  const nothing = outlineOfRings([]);
  expect(distanceBetween(nothing, outlineOfRings([box(0, 0, 1, 1)]))).toBe(Infinity);
  expect(isCloser(nothing, nothing, 0, 0, 1e9)).toBe(false);
});

test("an outline turned and moved has the boxes of its new points", () => {
  const outline = transformOutline(outlineOfRings([box(0, 0, 10, 20)]), [0, 1, -1, 0, 100, 200]);
  expect([...outline.box]).toEqual([80, 200, 100, 210]);
});

test("the enclosing circle holds every point and is hardly larger than the least possible", () => {
  fc.assert(
    fc.property(ring, (points) => {
      const { x, y, r } = enclosingCircle(points);
      let widest = 0;
      for (let i = 0; i < points.length; i += 2) {
        expect(Math.sqrt((points[i]! - x) ** 2 + (points[i + 1]! - y) ** 2)).toBeLessThanOrEqual(r + 1e-9);
        for (let j = 0; j < i; j += 2)
          widest = Math.max(
            widest,
            Math.sqrt((points[i]! - points[j]!) ** 2 + (points[i + 1]! - points[j + 1]!) ** 2),
          );
      }
      // Jung's theorem: no set needs more than its width over the root of 3.
      expect(r).toBeLessThanOrEqual((widest / Math.sqrt(3)) * 1.02);
    }),
    { seed: 9, numRuns: 200 },
  );
});
