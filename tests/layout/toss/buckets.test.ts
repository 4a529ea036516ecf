import fc from "fast-check";
import { expect, test } from "vitest";
import { bucketsOver } from "../../../src/layout/toss/buckets.ts";

const MOST = 2 ** 19;

test("buckets cover their zone, each as wide as was asked, and what is beside it counts to the edge", () => {
  const at = fc.integer({ min: -3000, max: 9000 });
  fc.assert(
    fc.property(
      at,
      at,
      fc.integer({ min: 1, max: 6000 }),
      fc.integer({ min: 1, max: 6000 }),
      at,
      at,
      (x, y, w, h, px, py) => {
        const buckets = bucketsOver([x, y, x + w, y + h], 37);
        expect(buckets).toMatchObject({ side: 37, columns: Math.ceil(w / 37), rows: Math.ceil(h / 37) });
        const clamped = (n: number, most: number): number => Math.min(most, Math.max(0, n));
        expect(buckets.column(px)).toBe(clamped(Math.floor((px - x) / 37), buckets.columns - 1));
        expect(buckets.row(py)).toBe(clamped(Math.floor((py - y) / 37), buckets.rows - 1));
        expect(buckets.count).toBe(buckets.columns * buckets.rows);
      },
    ),
    { seed: 2, numRuns: 200 },
  );
});

test("however wide the ground and however small what stands on it, there are never too many", () => {
  const length = fc.integer({ min: 0, max: 2_000_000_000 });
  fc.assert(
    fc.property(length, length, fc.integer({ min: 1, max: 1000 }), (width, height, size) => {
      const { count, side, columns, rows } = bucketsOver([0, 0, width, height], size);
      expect(count).toBeLessThanOrEqual(MOST + 1);
      expect(side).toBeGreaterThanOrEqual(size);
      expect(side * columns).toBeGreaterThanOrEqual(width);
      expect(side * rows).toBeGreaterThanOrEqual(height);
    }),
    { seed: 7, numRuns: 400 },
  );
});

test("a zone without width, or turned inside out for want of things, is one bucket", () => {
  expect(bucketsOver([5, 5, 5, 5], 10).count).toBe(1);
  expect(bucketsOver([Infinity, Infinity, -Infinity, -Infinity], 10).count).toBe(1);
});
