import fc from "fast-check";
import { expect, test } from "vitest";
import { apportion, excess } from "../../../src/layout/toss/shares.ts";

const shares = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 12 });

test("apportioned counts add up, and each is within one of its quota", () => {
  fc.assert(
    fc.property(shares, fc.integer({ min: 0, max: 500 }), (list, total) => {
      const counts = apportion(total, list);
      const sum = list.reduce((a, b) => a + b, 0);
      expect(counts.reduce((a, b) => a + b, 0)).toBe(total);
      counts.forEach((count, k) => {
        expect(Math.abs(count - (total * list[k]!) / sum)).toBeLessThan(1);
      });
      expect(excess(counts, list).over).toBeLessThan(1);
    }),
    { seed: 3 },
  );
});

test("the largest remainder wins the seat", () => {
  // Ten seats for 47, 16, 15.8, 12, 6.1 and 3.1 parts: the usual worked example of Hamilton's method, in tenths.
  expect(apportion(10, [47_000, 16_000, 15_800, 12_000, 6_100, 3_100])).toEqual([5, 2, 1, 1, 1, 0]);
  expect(apportion(1, [1, 1])).toEqual([1, 0]);
});

test("the entry most over its share is named", () => {
  expect(excess([5, 1, 1], [1, 1, 1])).toEqual({ entry: 0, over: 5 - 7 / 3 });
});
