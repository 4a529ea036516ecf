import fc from "fast-check";
import { expect, test } from "vitest";
import { createKinIndex } from "../../../src/layout/toss/kin-index.ts";

interface Dot {
  readonly mx: number;
  readonly my: number;
}

const at = fc.integer({ min: -300, max: 1300 }); // also beside the zone
const dot = fc.record({ entry: fc.integer({ min: 0, max: 2 }), mx: at, my: at });

test("finds all that looking at every one finds, after some came and went", () => {
  fc.assert(
    fc.property(
      fc.array(dot, { maxLength: 120 }),
      fc.array(fc.boolean(), { minLength: 120, maxLength: 120 }),
      fc.record({
        entry: fc.integer({ min: 0, max: 3 }),
        x: at,
        y: at,
        reach: fc.integer({ min: 0, max: 400 }),
      }),
      (dots, leave, { entry, x, y, reach }) => {
        const index = createKinIndex<Dot>(Float64Array.from([0, 0, 1000, 800]), 90);
        for (const one of dots) index.add(one.entry, one);
        dots.forEach((one, k) => {
          if (leave[k]) index.remove(one.entry, one);
        });
        const near = (one: Dot): boolean => (one.mx - x) ** 2 + (one.my - y) ** 2 <= reach * reach;
        const found: Dot[] = [];
        const look = (one: Dot): boolean => found.push(one) === 0;
        expect(index.near(entry, x, y, reach, look)).toBe(false);
        const expected = dots.filter((one, k) => one.entry === entry && !leave[k] && near(one));
        expect(new Set(found.filter(near))).toEqual(new Set(expected));
        expect(found.length, "each once").toBe(new Set(found).size);
      },
    ),
    { seed: 5, numRuns: 300 },
  );
});

test("passes over what is far when there are many, and ends when told", () => {
  const index = createKinIndex<Dot>(Float64Array.from([0, 0, 1000, 1000]), 50);
  for (let k = 0; k < 400; k++) index.add(0, { mx: (k % 20) * 50 + 25, my: Math.floor(k / 20) * 50 + 25 });
  let seen = 0;
  const ended = index.near(0, 500, 500, 60, () => ++seen > 1000);
  expect(ended).toBe(false);
  expect(seen).toBeLessThan(30);
  expect(index.near(0, 500, 500, 60, () => true)).toBe(true);
});
