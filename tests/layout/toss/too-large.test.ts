import { describe, expect, test } from "vitest";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { pen } from "../../../src/geometry/pen.ts";
import { planeGroup, type RepeatUse } from "../../../src/index.ts";
import { packTossed } from "../../../src/layout/toss/pack.ts";
import { definitionOf } from "../../../src/params/use.ts";
import type { RepeatPiece } from "../../../src/repeat/repeat.ts";
import { disc, entriesOf, options, tools } from "./fixtures.ts";

const arranged = (repeat: RepeatUse): Arrangement =>
  definitionOf<RepeatPiece>(repeat, "test").arrange(repeat.params as never);

/**
 * Mirrors cut the plane into triangles with a right angle: under p4mm of width w with legs of w/2, under p6mm with a long side
 * of w/√3 and legs of half that and of w/2 (International Tables for Crystallography A). The circle inscribed in such a triangle
 * has a radius of half of (legs - long side).
 */
const triangles = [
  ["p4mm", 100, (50 + 50 - 50 * Math.SQRT2) / 2],
  ["p6mm", 100, (50 + 50 / Math.sqrt(3) - 100 / Math.sqrt(3)) / 2],
] as const;

describe.each(triangles)("between the mirrors of %s", (group, width, inscribed) => {
  const arrangement = arranged(planeGroup({ group, width }));
  const toss = (r: number, gap: number) =>
    packTossed(options({ gap, entries: entriesOf(disc(r)) }), tools("s", arrangement));

  test.each([0, 0.2, 1])(
    "the inscribed circle less half a gap of %s mm goes in, and no larger one",
    async (gap) => {
      const most = inscribed - gap / 2;
      const [only, ...others] = await toss(most - 0.05, gap);
      expect(others).toEqual([]);
      expect(only).toBeDefined();
      const error = await toss(most + 0.05, gap).catch((e) => e);
      expect(error.code).toBe("motif-too-large");
      // It says how large it may be: to a tenth of a millimetre.
      const said = Number(/at most about ([\d.]+) x/.exec(error.message)![1]);
      expect(said).toBeGreaterThan(2 * most - 0.2);
      expect(said).toBeLessThanOrEqual(2 * most);
    },
  );
});

test("a motif that goes in only when it is mirrored is not refused where it may be", async () => {
  // A rod that runs down by one in three is longer than the step from copy to copy, which does too; mirrored, it lies across.
  const rod = pen().moveTo(-20, -7).lineTo(20, 6).lineTo(20, 7).lineTo(-20, -6).close().path();
  const unit = { width: 36_000, height: 36_000 };
  const lattice = { a: [36_000, 12_000], b: [0, 36_000], block: { width: 108_000, height: 36_000 } } as const;
  const drop: Arrangement = { unit, lattice, operations: [[1, 0, 0, 1, 0, 0]] };
  const toss = (flip: boolean) =>
    packTossed(options({ gap: 3, direction: "one-way", flip, entries: entriesOf(rod) }), tools("s", drop));
  await expect(toss(false)).rejects.toMatchObject({ code: "motif-too-large" });
  const placed = await toss(true);
  expect(placed.length).toBeGreaterThan(0);
  expect(placed.every(({ flip }) => flip)).toBe(true);
});

test("a gap that reaches thousands of copies is refused at once", async () => {
  const arrangement = arranged(planeGroup({ group: "p6mm", width: 20 }));
  const start = process.cpuUsage().user;
  await expect(
    packTossed(options({ gap: 500, entries: entriesOf(disc(1.5)) }), tools("s", arrangement)),
  ).rejects.toMatchObject({ code: "motif-too-large" });
  expect((process.cpuUsage().user - start) / 1e6).toBeLessThan(2);
});
