import fc from "fast-check";
import { expect, test } from "vitest";
import { contains, pointSideSquared } from "../../../src/geometry/distance.ts";
import { outlineOfRings } from "../../../src/geometry/outline.ts";
import { distanceMap, type Moved } from "../../../src/layout/toss/distance-map.ts";

const WORST = 10;
const grid = { cell: 10, left: -40, top: 25, columns: 33, rows: 27 };

/** Every side against every point. */
function byHand(outlines: readonly Moved[], at: number): number {
  const x = grid.left + (at % grid.columns) * grid.cell;
  const y = grid.top + Math.floor(at / grid.columns) * grid.cell;
  let [least, inside] = [Infinity, false];
  for (const { outline, dx, dy } of outlines) {
    const { points: p, rings } = outline;
    inside ||= contains(outline, x - dx, y - dy);
    for (let r = 0; r + 1 < rings.length; r++)
      for (let i = rings[r]! * 2; i < rings[r + 1]! * 2 - 2; i += 2)
        least = Math.min(least, pointSideSquared(x - dx, y - dy, p[i]!, p[i + 1]!, p[i + 2]!, p[i + 3]!));
  }
  return (inside ? -1 : 1) * Math.sqrt(least);
}

const corner = fc.tuple(fc.integer({ min: -150, max: 400 }), fc.integer({ min: -100, max: 400 }));
const triangle = fc
  .tuple(corner, corner, corner)
  .map(([[ax, ay], [bx, by], [cx, cy]]) =>
    (bx - ax) * (cy - ay) - (by - ay) * (cx - ax) >= 0 ? [ax, ay, bx, by, cx, cy] : [ax, ay, cx, cy, bx, by],
  )
  .filter(([ax, ay, bx, by, cx, cy]) => (bx! - ax!) * (cy! - ay!) !== (by! - ay!) * (cx! - ax!));

test("is the distance to the nearest side, negative within; a cell off at most, and seldom at all", () => {
  let [off, all] = [0, 0];
  fc.assert(
    fc.property(fc.array(triangle, { minLength: 1, maxLength: 5 }), (rings) => {
      const outlines = rings.map((ring, k) => ({ outline: outlineOfRings([ring]), dx: 7 * k, dy: -3 * k }));
      const map = distanceMap(grid, outlines);
      const errors = Array.from(map, (value, at) => Math.abs(value - byHand(outlines, at)));
      expect(Math.max(...errors)).toBeLessThan(WORST);
      all += errors.length;
      off += errors.filter((error) => error > 1e-3).length;
    }),
    { numRuns: 60, seed: 7 },
  );
  expect(off / all).toBeLessThan(0.001);
});

test("holes, and sides that end far beyond the grid, count too", () => {
  const frame = [-1e6, -1e6, 1e6, -1e6, 1e6, 1e6, -1e6, 1e6];
  const hole = [20, 60, 20, 200, 180, 200, 180, 60];
  const outlines = [{ outline: outlineOfRings([frame, hole]), dx: 0, dy: 0 }];
  const map = distanceMap(grid, outlines);
  map.forEach((value, at) => void expect(value).toBeCloseTo(byHand(outlines, at), 3));
  expect(map.some((value) => value > 0)).toBe(true);
  expect(map.some((value) => value < 0)).toBe(true);
});
