import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { imagesOf } from "../../src/geometry/images.ts";
import type { Arrangement, Lattice } from "../../src/geometry/lattice.ts";
import { inRegion } from "../../src/geometry/region.ts";
import { halfDrop, planeGroup, type RepeatUse, straight } from "../../src/index.ts";
import { definitionOf } from "../../src/params/use.ts";
import type { RepeatPiece } from "../../src/repeat/repeat.ts";

const arranged = (repeat: RepeatUse): Arrangement =>
  definitionOf<RepeatPiece>(repeat, "test").arrange(repeat.params as never);

const kinds: readonly (readonly [string, Arrangement])[] = [
  ["straight", arranged(straight({ width: 7, height: 5 }))],
  ["half-drop", arranged(halfDrop({ width: 7, height: 5 }))],
  ["p2, leaning", arranged(planeGroup({ group: "p2", width: 8, height: 6, lean: 20 }))],
  ["c2mm", arranged(planeGroup({ group: "c2mm", width: 9, height: 6 }))],
  ["p4mm", arranged(planeGroup({ group: "p4mm", width: 8 }))],
  ["p3", arranged(planeGroup({ group: "p3", width: 8 }))],
  ["p6mm", arranged(planeGroup({ group: "p6mm", width: 8 }))],
];

/** The definition of a lattice: every i·a + j·b, far beyond all that is asked for here. */
const FAR = 14;
function* vectors({ a, b }: Lattice): Generator<readonly [number, number]> {
  for (let i = -FAR; i <= FAR; i++)
    for (let j = -FAR; j <= FAR; j++) yield [i * a[0] + j * b[0], i * a[1] + j * b[1]];
}
const sorted = (list: readonly (readonly [number, number])[]): string[] =>
  list.map(([x, y]) => `${x + 0} ${y + 0}`).sort();

const at = fc.integer({ min: -6000, max: 6000 });
const box = fc
  .tuple(at, at, fc.integer({ min: 0, max: 4000 }), fc.integer({ min: 0, max: 4000 }))
  .map(([x, y, w, h]) => [x, y, x + w, y + h]);

describe.each(kinds)("under %s", (_, arrangement) => {
  const images = imagesOf(arrangement);

  test("between gives every lattice vector that brings one box near another, and no other", () => {
    fc.assert(
      fc.property(box, box, fc.integer({ min: 0, max: 3000 }), (moving, still, reach) => {
        const found: [number, number][] = [];
        expect(images.between(moving, still, reach, (dx, dy) => found.push([dx, dy]))).toBe(false);
        const near = [...vectors(arrangement.lattice)].filter(
          ([dx, dy]) =>
            moving[0]! + dx <= still[2]! + reach &&
            moving[2]! + dx >= still[0]! - reach &&
            moving[1]! + dy <= still[3]! + reach &&
            moving[3]! + dy >= still[1]! - reach,
        );
        expect(sorted(found)).toEqual(sorted(near));
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  test("between ends when it is told to", () => {
    let seen = 0;
    expect(images.between([0, 0, 1, 1], [0, 0, 1, 1], 30_000, () => ++seen === 3)).toBe(true);
    expect(seen).toBe(3);
  });

  test("home brings a point to the one place in the unit that a lattice vector leads to, if there is one", () => {
    const { unit, region, lattice } = arrangement;
    fc.assert(
      fc.property(at, at, (x, y) => {
        const inside = [...vectors(lattice)].filter(([dx, dy]) => {
          const [u, v] = [x + dx, y + dy];
          const within = u >= 0 && v >= 0 && u < unit.width && v < unit.height;
          return within && (!region || inRegion(region, u, v));
        });
        expect(inside.length).toBeLessThan(2);
        const way = images.home(x, y);
        expect(sorted(way ? [way] : [])).toEqual(sorted(inside));
      }),
      { seed: 4, numRuns: 150 },
    );
  });
});
