import { describe, expect, it } from "vitest";
import { imagesOf } from "../../../src/geometry/images.ts";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { fixesPoint, fixing } from "../../../src/geometry/symmetry/fixed.ts";
import { specialPlaces } from "../../../src/geometry/symmetry/special.ts";
import { halfDrop } from "../../../src/repeat/half-drop.ts";
import { mirror } from "../../../src/repeat/mirror.ts";
import { planeGroup } from "../../../src/repeat/plane-group.ts";
import { turnover } from "../../../src/repeat/turnover.ts";

const arranged = (use: { params: object }, factory: { piece: { arrange: unknown } }): Arrangement =>
  (factory.piece.arrange as (params: object) => Arrangement)(use.params);

const squareOrHexagonal = ["p4", "p4mm", "p4gm", "p3", "p3m1", "p31m", "p6", "p6mm"];
const group = (name: string): Arrangement =>
  arranged(
    planeGroup({
      group: name as never,
      width: 96,
      ...(squareOrHexagonal.includes(name) ? {} : { height: 60 }),
    }),
    planeGroup,
  );

describe("the special places of a repeat", () => {
  // Points of site symmetry 2, 3, 4, 6 (with or without mirrors) in each group, from the lists of Wyckoff positions
  // in the International Tables for Crystallography, volume A (the 17 plane groups): how many kinds of each order.
  it.each([
    ["p1", []],
    ["p2", [2, 2, 2, 2]],
    ["pm", []],
    ["pg", []],
    ["cm", []],
    ["p2mm", [2, 2, 2, 2]],
    ["p2mg", [2, 2]],
    ["p2gg", [2, 2]],
    ["c2mm", [2, 2, 2]],
    ["p4", [4, 4, 2]],
    ["p4mm", [4, 4, 2]],
    ["p4gm", [4, 2]],
    ["p3", [3, 3, 3]],
    ["p3m1", [3, 3, 3]],
    ["p31m", [3, 3]],
    ["p6", [6, 3, 2]],
    ["p6mm", [6, 3, 2]],
  ])("%s has centres of the orders %j", (name, orders) => {
    expect(specialPlaces(group(name)).centres.map(({ order }) => order)).toEqual(orders);
  });

  it.each(["pm", "cm", "p2mm", "p2mg", "c2mm", "p4mm", "p4gm", "p3m1", "p31m", "p6mm"])(
    "%s has mirrors, and every point of them is fixed by an operation",
    (name) => {
      const arrangement = group(name);
      const images = imagesOf(arrangement);
      const { mirrors, centres } = specialPlaces(arrangement);
      expect(mirrors.length).toBeGreaterThan(0);
      for (const { from, to } of mirrors)
        for (const t of [0.1, 0.37, 0.9]) {
          const [x, y] = [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])];
          expect(fixing(images, x, y).length, `${x}, ${y}`).toBeGreaterThan(0);
        }
      for (const { x, y, order } of centres) {
        const fixed = fixing(images, x, y);
        expect(fixed.every((g) => fixesPoint(g, x, y))).toBe(true);
        expect([order - 1, 2 * order - 1]).toContain(fixed.length);
      }
    },
  );

  it.each(["p1", "p2", "pg", "p2gg", "p4", "p3", "p6"])("%s has no mirrors: glides are none", (name) => {
    expect(specialPlaces(group(name)).mirrors).toEqual([]);
  });

  it("the repeats of the trade have theirs on the edges of the unit", () => {
    const size = { width: 50, height: 40 };
    expect(specialPlaces(arranged(mirror(size), mirror))).toEqual({
      centres: [],
      mirrors: [
        { from: [0, 0], to: [0, 40_000] },
        { from: [50_000, 0], to: [50_000, 40_000] },
      ],
    });
    expect(specialPlaces(arranged(turnover(size), turnover)).centres).toHaveLength(4);
    expect(specialPlaces(arranged(halfDrop(size), halfDrop))).toEqual({ centres: [], mirrors: [] });
  });

  it("a general point is fixed by nothing", () => {
    const images = imagesOf(group("p6mm"));
    expect(fixing(images, 41_000, 9_000)).toEqual([]);
  });
});
