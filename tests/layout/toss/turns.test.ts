import fc from "fast-check";
import { expect, test } from "vitest";
import { turnIndex, turnsFor } from "../../../src/layout/toss/turns.ts";

test("a direction's turns are what it says, and only a toss is free to turn", () => {
  expect([...turnsFor("one-way").turn]).toEqual([0]);
  expect([...turnsFor("two-way").turn]).toEqual([0, 0.5]);
  expect([...turnsFor("four-way").turn]).toEqual([0, 0.25, 0.5, 0.75]);
  expect([...turnsFor([0.1, 0.6]).turn]).toEqual([0.1, 0.6]);
  expect(turnsFor("tossed").turn).toHaveLength(720);
  expect((["one-way", "two-way", "four-way", [0, 0.5]] as const).some((way) => turnsFor(way).free)).toBe(
    false,
  );
  expect(turnsFor("tossed").free).toBe(true);
});

test("any turn, wound however often, is brought to the nearest that is allowed", () => {
  const turns = turnsFor("tossed");
  fc.assert(
    fc.property(fc.double({ min: -40, max: 40, noNaN: true }), (at) => {
      const turn = turns.turn[turnIndex(turns, at)]!;
      const off = at - turn - Math.round(at - turn);
      expect(Math.abs(off)).toBeLessThanOrEqual(0.5 / 720 + 1e-12);
    }),
    { seed: 3 },
  );
  expect(turnIndex(turns, 0.99999)).toBe(0);
  expect(turnIndex(turns, -1e-9)).toBe(0);
});

test("where turns are not free, they are themselves", () => {
  const turns = turnsFor([0.1, 0.35, 0.6]);
  expect([0.1, 0.35, 0.6].map((at) => turnIndex(turns, at))).toEqual([0, 1, 2]);
});
