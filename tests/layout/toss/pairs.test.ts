import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Images, imagesOf } from "../../../src/geometry/images.ts";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { planeGroup, type RepeatUse } from "../../../src/index.ts";
import { bodiesOf } from "../../../src/layout/toss/body.ts";
import { type Crowd, createCrowd } from "../../../src/layout/toss/crowd.ts";
import { kinPairsOf, type Pairs, pairsOf } from "../../../src/layout/toss/pairs.ts";
import { definitionOf } from "../../../src/params/use.ts";
import type { RepeatPiece } from "../../../src/repeat/repeat.ts";
import { disc, entriesOf, repeats } from "./fixtures.ts";

const arranged = (repeat: RepeatUse): Arrangement =>
  definitionOf<RepeatPiece>(repeat, "test").arrange(repeat.params as never);
const bodies = bodiesOf(entriesOf(disc(2), disc(3), disc(1)));
const crowded = (list: readonly { entry: number; x: number; y: number; scale: number }[]): Crowd =>
  createCrowd(
    list.map(({ entry, x, y, scale }) => ({ body: bodies[entry]![0]!, x, y, scale, turn: 0, flip: false })),
    true,
  );
const one = fc.record({
  entry: fc.integer({ min: 0, max: 2 }),
  x: fc.integer({ min: -5000, max: 50_000 }),
  y: fc.integer({ min: -5000, max: 45_000 }),
  scale: fc.constantFrom(0.5, 1, 1.3),
});
type Pair = readonly [number, number, number, number, number];
const listed = ({ first, second, operation, dx, dy }: Pairs): Pair[] =>
  first.map((i, k) => [i, second[k]!, operation[k]!, dx[k]!, dy[k]!]);
const sorted = (pairs: readonly Pair[]): string[] => pairs.map(String).sort();

/** Every body against every later one and itself, under every operation and translation: `meet` says which are pairs. */
function everyPair(
  images: Images,
  { x, y }: Crowd,
  meet: (i: number, j: number, operation: number, ox: number, oy: number, dx: number, dy: number) => boolean,
): Pair[] {
  const pairs: Pair[] = [];
  for (let i = 0; i < x.length; i++)
    for (let j = i; j < x.length; j++)
      images.operations.forEach(([a, b, c, d, e, f], operation) => {
        const [jx, jy] = [a * x[j]! + c * y[j]! + e, b * x[j]! + d * y[j]! + f];
        images.between([jx, jy, jx, jy], [x[i]!, y[i]!, x[i]!, y[i]!], 60_000, (dx, dy) => {
          if (meet(i, j, operation, jx + dx - x[i]!, jy + dy - y[i]!, dx, dy))
            pairs.push([i, j, operation, dx, dy]);
        });
      });
  return pairs;
}

describe.each([
  ["a straight repeat", repeats.straight(50, 40)],
  ["mirrors", repeats.mirror(50, 40)],
  ["p6", arranged(planeGroup({ group: "p6", width: 60 }))],
] as const)("under %s", (_, arrangement) => {
  const images = imagesOf(arrangement);

  test("kin are paired as by looking at all of a kind, in the same order, and not at all where they need not part", () => {
    const apart = [6000, 0, 11_000];
    let found = 0;
    fc.assert(
      fc.property(fc.array(one, { minLength: 10, maxLength: 30 }), (list) => {
        const crowd = crowded(list);
        const pairs = listed(kinPairsOf(images, crowd, apart));
        const kind = (i: number): number => list[i]!.entry;
        const expected = everyPair(images, crowd, (i, j, operation, ox, oy) => {
          const reach = apart[kind(i)]! + crowd.radius[i]! + crowd.radius[j]!;
          const near = Math.abs(ox) <= reach && Math.abs(oy) <= reach;
          return kind(i) === kind(j) && apart[kind(i)]! > 0 && near && (i !== j || operation > 0);
        });
        for (const entry of [0, 1, 2])
          expect(pairs.filter(([i]) => kind(i) === entry)).toEqual(
            expected.filter(([i]) => kind(i) === entry),
          );
        expect(pairs).toHaveLength(expected.length);
        found += pairs.length;
      }),
      { seed: 5, numRuns: 40 },
    );
    expect(found).toBeGreaterThan(200);
  });

  test("bodies are paired as by looking at all", () => {
    fc.assert(
      fc.property(
        fc.array(one, { minLength: 10, maxLength: 30 }),
        fc.integer({ min: 0, max: 4000 }),
        (list, reach) => {
          const crowd = crowded(list);
          const expected = everyPair(images, crowd, (i, j, operation, ox, oy, dx, dy) => {
            if (i === j && operation === 0 && (dx < 0 || (dx === 0 && dy <= 0))) return false;
            return Math.sqrt(ox * ox + oy * oy) < crowd.radius[i]! + crowd.radius[j]! + reach;
          });
          expect(sorted(listed(pairsOf(images, crowd, reach)))).toEqual(sorted(expected));
        },
      ),
      { seed: 6, numRuns: 40 },
    );
  });
});

test("thousands that need not part cost nothing, and specks on a wide ground no more than they are", () => {
  const side = 2_000_000;
  const list = Array.from({ length: 3000 }, (_, k) => ({
    entry: 0,
    x: (k * 7919) % side,
    y: (k * 104_729) % side,
    scale: 0.005,
  }));
  const crowd = crowded(list);
  const images = imagesOf(repeats.straight(2000, 2000));
  let asked = 0;
  const counting: Images = {
    ...images,
    between(...of) {
      asked++;
      return images.between(...of);
    },
  };
  expect(kinPairsOf(counting, crowd, [0, 0, 0]).first).toEqual([]);
  expect(asked).toBe(0);
  expect(pairsOf(images, crowd, 0).first.length).toBeLessThan(10);
  kinPairsOf(counting, crowd, [20_000, 0, 0]);
  expect(asked).toBe(3000);
});
