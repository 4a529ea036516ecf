import { describe, expect, test } from "vitest";
import { pointSideSquared } from "../../../src/geometry/distance.ts";
import { flatten } from "../../../src/geometry/flatten.ts";
import { type Outline, outlineOfRings, silhouetteOf } from "../../../src/geometry/outline.ts";
import { enclosingCircle } from "../../../src/geometry/reach.ts";
import { rimOf } from "../../../src/layout/toss/rim.ts";
import { cosTurns, sinTurns } from "../../../src/seed/trigonometry.ts";
import { blossom, crescent, disc, leaf, sprig, star } from "./fixtures.ts";

const pairs = (list: ArrayLike<number>): [number, number][] =>
  Array.from({ length: list.length / 2 }, (_, k) => [list[2 * k]!, list[2 * k + 1]!]);
const far = (x: number, y: number, points: readonly (readonly [number, number])[]): number =>
  Math.min(...points.map(([px, py]) => Math.hypot(px - x, py - y)));

/** How far a point lies from the sides of an outline. */
function fromSides({ points, rings }: Outline, x: number, y: number): number {
  let least = Infinity;
  for (let r = 0; r + 1 < rings.length; r++)
    for (let i = rings[r]! * 2; i < rings[r + 1]! * 2 - 2; i += 2)
      least = Math.min(
        least,
        pointSideSquared(x, y, points[i]!, points[i + 1]!, points[i + 2]!, points[i + 3]!),
      );
  return Math.sqrt(least);
}

describe.each(Object.entries({ blossom, crescent, leaf, sprig, star, disc: () => disc(18) }))(
  "the rim of a %s",
  (_, make) => {
    const outline = outlineOfRings(silhouetteOf(make(), 8));
    const circle = enclosingCircle(outline.points);
    const rim = pairs(rimOf(outline, circle));

    test("is at most 64 points, all on the outline, no two the same", () => {
      expect(rim.length).toBeLessThanOrEqual(64);
      expect(new Set(rim.map(String)).size).toBe(rim.length);
      for (const [x, y] of rim) expect(fromSides(outline, x, y)).toBeLessThan(1e-6);
    });

    test("leaves no part of the outline farther from a point than a seventh of the radius", () => {
      for (const ring of flatten(make(), 8))
        for (const [x, y] of pairs(ring)) expect(far(x, y, rim)).toBeLessThan(0.14 * circle.r + 1);
    });
  },
);

test("the tips of a star are on its rim, exactly", () => {
  const outline = outlineOfRings(silhouetteOf(star(), 8));
  const rim = pairs(rimOf(outline, enclosingCircle(outline.points)));
  for (let k = 0; k < 5; k++)
    expect(far(18_000 * cosTurns(k / 5), 18_000 * sinTurns(k / 5), rim)).toBeLessThan(1);
});

test("of more tips than there are points, those kept go all the way round", () => {
  const wheel = Array.from({ length: 400 }, (_, k) => {
    const r = k % 2 === 0 ? 20_000 : 18_000;
    return [Math.round(r * cosTurns(k / 400)), Math.round(r * sinTurns(k / 400))];
  }).flat();
  const outline = outlineOfRings([wheel]);
  const rim = pairs(rimOf(outline, enclosingCircle(outline.points)));
  expect(rim).toHaveLength(64);
  for (const [x, y] of pairs(wheel)) expect(far(x, y, rim)).toBeLessThan(3500);
});
