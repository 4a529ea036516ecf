import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { distanceBetween } from "../../../src/geometry/distance.ts";
import { imagesOf } from "../../../src/geometry/images.ts";
import type { Arrangement } from "../../../src/geometry/lattice.ts";
import { type Matrix, placing } from "../../../src/geometry/matrix.ts";
import { transformOutline } from "../../../src/geometry/outline.ts";
import { type Body, bodiesOf } from "../../../src/layout/toss/body.ts";
import { type Crowd, createCrowd, type Mover, poseOf } from "../../../src/layout/toss/crowd.ts";
import { gridOver } from "../../../src/layout/toss/field.ts";
import { relax } from "../../../src/layout/toss/relax.ts";
import { cosTurns, sinTurns } from "../../../src/seed/trigonometry.ts";
import { crescent, disc, entriesOf, leaf } from "./fixtures.ts";

const [[round], [moon], [blade]] = bodiesOf(entriesOf(disc(6), crescent(), leaf())) as [
  [Body],
  [Body],
  [Body],
];
const M = 1_000_000;
const wide: Arrangement = {
  unit: { width: 10 * M, height: 10 * M },
  lattice: { a: [10 * M, 0], b: [0, 10 * M], block: { width: 10 * M, height: 10 * M } },
  operations: [[1, 0, 0, 1, 0, 0]],
};
const grid = gridOver(Float64Array.from([0, 0, 1000, 1000]), 100);
const GAP = 2000;
let breaths = 0;
const pushed = (crowd: Crowd, arrangement = wide, gap = GAP, sweeps = 400): Promise<Float64Array> =>
  relax(imagesOf(arrangement), crowd, {
    gap,
    sweeps,
    nests: [0, 0, 0],
    drift: { apart: [], sweeps: 0 },
    kept: false,
    margin: 0.006,
    close: 0.002,
    grid,
    room: undefined,
    breathe: async () => void breaths++,
  });
const mover = (body: Body, x: number, y: number, turn = 0, scale = 1, flip = false): Mover => ({
  body,
  x,
  y,
  turn,
  scale,
  flip,
});
const outlineIn = (crowd: Crowd, i: number) =>
  transformOutline(crowd.movers[i]!.body.outline, poseOf(crowd, i));
const mass = (crowd: Crowd, i: number): number => crowd.radius[i]! * crowd.radius[i]!;

const mm = (least: number, most: number) => fc.integer({ min: least * 1000, max: most * 1000 });
const anyDisc = fc
  .record({ x: mm(0, 40), y: mm(0, 40), scale: fc.double({ min: 0.3, max: 1.4, noNaN: true }) })
  .map(({ x, y, scale }) => mover(round, x, y, 0, scale));
const anyMover = fc
  .record({
    body: fc.constantFrom(round, moon, blade),
    x: mm(0, 60),
    y: mm(0, 60),
    turn: fc.double({ min: 0, max: 1, noNaN: true }),
    flip: fc.boolean(),
  })
  .map(({ body, x, y, turn, flip }) => mover(body, x, y, turn, body === round ? 1 : 0.4, flip));

test("discs that overlap are pushed apart, and their common centre of mass stays", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(anyDisc, { minLength: 2, maxLength: 14 }), async (movers) => {
      const crowd = createCrowd(movers, true);
      const centre = (axis: "x" | "y"): number =>
        crowd[axis].reduce((sum, at, i) => sum + at * mass(crowd, i), 0) /
        crowd.radius.reduce((sum, _, i) => sum + mass(crowd, i), 0);
      const before = [centre("x"), centre("y")];
      const left = await pushed(crowd);
      expect(Math.max(...left)).toBe(0);
      expect(Math.abs(centre("x") - before[0]!)).toBeLessThan(1e-3);
      expect(Math.abs(centre("y") - before[1]!)).toBeLessThan(1e-3);
      for (let i = 0; i < movers.length; i++)
        for (let j = 0; j < i; j++) {
          const apart = Math.hypot(crowd.x[i]! - crowd.x[j]!, crowd.y[i]! - crowd.y[j]!);
          expect(apart - crowd.radius[i]! - crowd.radius[j]!).toBeGreaterThan(GAP - 60);
        }
    }),
    { seed: 21, numRuns: 60, examples: [[[mover(round, 0, 0), mover(round, 1, 0)]]] },
  );
});

test("leaves and moons come free too, by the distance of their outlines", async () => {
  let free = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(anyMover, { minLength: 2, maxLength: 10 }), async (movers) => {
      const crowd = createCrowd(movers, true);
      if ((await pushed(crowd)).some((depth) => depth > 0)) return;
      free++;
      for (let i = 0; i < movers.length; i++)
        for (let j = 0; j < i; j++)
          expect(distanceBetween(outlineIn(crowd, i), outlineIn(crowd, j))).toBeGreaterThan(GAP - 150);
    }),
    { seed: 22, numRuns: 50 },
  );
  expect(free).toBeGreaterThan(45);
});

test("bodies that may not turn keep their turn to the last bit", async () => {
  const crowd = createCrowd([mover(blade, 0, 0, 0.1), mover(blade, 3000, 2000, 0.35)], false);
  expect(Math.max(...(await pushed(crowd)))).toBe(0);
  expect([...crowd.turn]).toEqual([0.1, 0.35]);
});

test("one that is twice as wide gives way a quarter as far", async () => {
  const crowd = createCrowd([mover(round, 0, 0, 0, 2), mover(round, 17_000, 0)], true);
  await pushed(crowd);
  expect(-crowd.x[0]! / (crowd.x[1]! - 17_000)).toBeCloseTo(0.25, 2);
});

test("nothing moves what is far enough apart", async () => {
  const crowd = createCrowd([mover(round, 0, 0), mover(blade, 40_000, 0, 0.2)], true);
  const before = [...crowd.x, ...crowd.y, ...crowd.turn];
  await pushed(crowd);
  expect([...crowd.x, ...crowd.y, ...crowd.turn]).toEqual(before);
});

test("what cannot come free says how deep it is left", async () => {
  // Discs of 12 mm with 2 mm between them do not go twice into 20 x 14 mm.
  const small: Arrangement = {
    unit: { width: 20_000, height: 14_100 },
    lattice: { a: [20_000, 0], b: [0, 14_100], block: { width: 20_000, height: 14_100 } },
    operations: [[1, 0, 0, 1, 0, 0]],
  };
  const left = await pushed(createCrowd([mover(round, 5000, 5000), mover(round, 15_000, 9000)], true), small);
  expect(Math.min(...left)).toBeGreaterThan(500);
});

test("long work gives way now and then", async () => {
  breaths = 0;
  const movers = Array.from({ length: 400 }, (_, k) =>
    mover(round, (k % 20) * 9000, Math.floor(k / 20) * 9000),
  );
  await pushed(createCrowd(movers, true), wide, GAP, 60);
  expect(breaths).toBeGreaterThan(2);
});

describe("a push comes back through the operation", () => {
  /** The eight that keep a square, far off: images meet only the other body. */
  const linear: readonly Matrix[] = [0, 0.25, 0.5, 0.75].flatMap((turn) =>
    [false, true].map((flip) => placing(300_000, 200_000, turn, 1, flip)),
  );

  test.each(linear.map((m, k) => [k, m] as const))("%i of p4mm", async (_, operation) => {
    const [a, b, c, d, e, f] = operation;
    const reflects = a * d - b * c < 0;
    // Where a body has to be for its image to be at (x, y, turn, flip).
    const behind = ({ body, x, y, turn, scale, flip }: Mover): Mover => {
      const back: [number, number] = [a * (x - e) + b * (y - f), c * (x - e) + d * (y - f)];
      // Of the turn of R(t) or R(t)D with D = diag(-1, 1), by the image of the second axis.
      const [vx, vy] = [-sinTurns(turn), cosTurns(turn)];
      const [wx, wy] = [a * vx + b * vy, c * vx + d * vy];
      const own = Math.atan2(-wx, wy) / (2 * Math.PI);
      return mover(body, ...back, own, scale, reflects ? !flip : flip);
    };
    await fc.assert(
      fc.asyncProperty(anyMover, anyMover, async (one, two) => {
        // The same two bodies: once side by side, once the second as an image only.
        const plain = createCrowd([one, two], true);
        const imaged = createCrowd([one, behind(two)], true);
        await pushed(plain, wide, GAP, 3);
        await pushed(imaged, { ...wide, operations: [[1, 0, 0, 1, 0, 0], operation] }, GAP, 3);
        expect(imaged.x[0]! - plain.x[0]!).toBeCloseTo(0, 3);
        expect(imaged.y[0]! - plain.y[0]!).toBeCloseTo(0, 3);
        const [k, l, m, n, p, q] = poseOf(imaged, 1);
        const image = [
          a * k + c * l,
          b * k + d * l,
          a * m + c * n,
          b * m + d * n,
          a * p + c * q + e,
          b * p + d * q + f,
        ];
        poseOf(plain, 1).forEach((value, at) => {
          expect(image[at]! - value).toBeCloseTo(0, at < 4 ? 6 : 2);
        });
      }),
      { seed: 23, numRuns: 25 },
    );
  });
});

test("the drifting of a kind that is far from touching takes its breaths too", async () => {
  const crowd = createCrowd(
    Array.from({ length: 300 }, (_, k) => mover(round, (k % 20) * 40_000, Math.floor(k / 20) * 40_000)),
    false,
  );
  let taken = 0;
  await relax(imagesOf(wide), crowd, {
    gap: GAP,
    sweeps: 0,
    nests: [0, 0, 0],
    drift: { apart: [900_000, 0, 0], sweeps: 3 },
    kept: false,
    margin: 0.006,
    close: 0.002,
    grid,
    room: undefined,
    breathe: async () => void taken++,
  });
  // 44 850 pairs in each of three rounds, a breath every 20 000.
  expect(taken).toBeGreaterThanOrEqual(6);
});
