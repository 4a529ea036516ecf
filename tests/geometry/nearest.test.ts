import fc from "fast-check";
import { expect, test } from "vitest";
import { nearestPoints } from "../../src/geometry/nearest.ts";
import { outlineOfRings } from "../../src/geometry/outline.ts";
import { cosTurns, sinTurns } from "../../src/seed/trigonometry.ts";
import { jstsDistance, jstsNearest, polygonOf } from "./jsts.ts";

/** A ring around (x, y) whose corners lie at the given radii: simple, mostly not convex. */
const ring = fc
  .tuple(
    fc.integer({ min: -90, max: 90 }),
    fc.integer({ min: -90, max: 90 }),
    fc.array(fc.integer({ min: 2, max: 50 }), { minLength: 3, maxLength: 40 }),
  )
  .map(([x, y, radii]) =>
    radii.flatMap((r, k) => [x + r * cosTurns(k / radii.length), y + r * sinTurns(k / radii.length)]),
  );
const shift = fc.integer({ min: -120, max: 120 });

test("the nearest points of polygons that are apart are as far from each other as those of JTS, and on the same line", () => {
  let apart = 0;
  let alike = 0;
  fc.assert(
    fc.property(ring, ring, shift, shift, (a, b, dx, dy) => {
      const moved = b.map((v, k) => v + (k % 2 === 0 ? dx : dy));
      const [one, two] = [polygonOf([a]), polygonOf([moved])];
      const expected = jstsDistance(one, two);
      if (expected < 1e-6) return;
      apart++;
      const near = nearestPoints(outlineOfRings([a]), outlineOfRings([b]), dx, dy, Infinity);
      expect(Math.abs(near.distance - expected)).toBeLessThan(1e-9);
      expect(Math.abs(Math.hypot(near.x, near.y) - expected)).toBeLessThan(1e-9);
      // From the second to the first: moved along it, the second touches the first; moved half-way, it is half as far.
      const along = (part: number) => moved.map((v, k) => v + part * (k % 2 === 0 ? near.x : near.y));
      expect(jstsDistance(one, polygonOf([along(1)]))).toBeLessThan(1e-6);
      expect(jstsDistance(one, polygonOf([along(0.5)]))).toBeLessThan(expected * 0.5 + 1e-6);
      const [x, y] = jstsNearest(one, two);
      if (Math.hypot(near.x - x, near.y - y) < 1e-6) alike++;
    }),
    { seed: 11, numRuns: 800 },
  );
  expect(apart).toBeGreaterThan(400);
  expect(alike, "ties apart, the very same points").toBeGreaterThan(0.98 * apart);
});

test("what is not nearer than the limit is not found", () => {
  const square = outlineOfRings([[0, 0, 10, 0, 10, 10, 0, 10]]);
  expect(nearestPoints(square, square, 15, 0, 5)).toEqual({ distance: Infinity, x: 0, y: 0 });
  expect(nearestPoints(square, square, 15, 0, 5.01)).toMatchObject({ distance: 5, x: -5 });
  expect(nearestPoints(square, square, 10, 3, 5).distance).toBe(0);
});
