import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { entryOfId, stillWanted } from "../../../src/layout/toss/held.ts";

describe("stillWanted", () => {
  it("is what the shares come to, less what stands", () => {
    expect(stillWanted(12, [1, 2, 3], [0, 0, 0])).toEqual([2, 4, 6]);
    expect(stillWanted(12, [1, 2, 3], [1, 4, 0])).toEqual([1, 0, 6]);
  });

  it("lets the others share what is left when one has more than its share", () => {
    expect(stillWanted(10, [1, 1, 2], [7, 0, 0])).toEqual([0, 1, 2]);
    expect(stillWanted(3, [1, 1], [9, 0])).toEqual([0, 0]);
  });

  it("always adds up to the total, and is never negative", () => {
    const counts = fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.nat(12)), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(counts, fc.nat(60), (entries, total) => {
        const already = entries.map(([, n]) => n);
        const there = already.reduce((a, b) => a + b, 0);
        const wanted = stillWanted(
          total,
          entries.map(([share]) => share),
          already,
        );
        expect(wanted.every((n) => Number.isInteger(n) && n >= 0)).toBe(true);
        expect(wanted.reduce((a, b) => a + b, 0)).toBe(Math.max(0, total - there));
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});

it("an id names its entry, if it is one of the toss's own", () => {
  expect(entryOfId("2-5", 3)).toBe(1);
  expect(entryOfId("3-17", 3)).toBe(2);
  for (const id of ["4-1", "0-1", "2-0", "2", "2-", "-5", "2-5-1", "moon", "1:2-3", " 2-5", "02-5", ""])
    expect(entryOfId(id, 3), id).toBeUndefined();
});
