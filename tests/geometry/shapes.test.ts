import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flatten } from "../../src/geometry/flatten.ts";
import { areaOf, CURVE } from "../../src/geometry/path.ts";
import { arcHandle, egg, ellipse, holed, loop, QUARTER } from "../../src/geometry/shapes.ts";

const K = 0.5522847498;
const DISC = 2 + 2.4 * K - 0.6 * K * K;

describe("circles and ellipses", () => {
  it("take the textbook handle of a quarter circle, 4 (√2 - 1) / 3", () => {
    expect(QUARTER).toBeCloseTo((4 * (Math.SQRT2 - 1)) / 3, 9);
  });

  it("have the area of their four cubics, wherever they are", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 90 }),
        fc.integer({ min: 1, max: 90 }),
        fc.integer({ min: -500, max: 500 }),
        (rx, ry, x) => {
          const path = ellipse(x, -x, rx, ry);
          expect(path.contours).toEqual([4]);
          const slack = (4 * (rx + ry)) / 1000;
          expect(Math.abs(areaOf(path) / 1e6 - DISC * rx * ry)).toBeLessThan(slack);
        },
      ),
      { seed: 3 },
    );
  });

  it("an egg reaches as far as asked in each direction, and turns with its top", () => {
    const xs = (up: readonly [number, number]): number[] => [...egg(1, 2, [5, 3, 4, 2], up).points];
    const upright = xs([0, -1]);
    expect([0, 1, 2, 3].map((i) => upright.slice(i * CURVE, i * CURVE + 2))).toEqual([
      [1000, -3000],
      [4000, 2000],
      [1000, 6000],
      [-1000, 2000],
    ]);
    expect(xs([1, 0]).slice(0, 2)).toEqual([6000, 2000]);
  });
});

describe("arcHandle", () => {
  it.each([5, 30, 60, 90])("is 4/3 tan(a/4) for an arc of %i degrees", (degrees) => {
    const a = (degrees * Math.PI) / 180;
    expect(arcHandle(Math.cos(a))).toBeCloseTo((4 / 3) * Math.tan(a / 4), 9);
  });

  it("is finite for half a turn and for none", () => {
    expect(arcHandle(1)).toBe(0);
    expect(Number.isFinite(arcHandle(-1))).toBe(true);
  });
});

describe("holed", () => {
  it("takes the hole's area away, the hole running the other way", () => {
    const path = holed(ellipse(0, 0, 10), ellipse(0, 0, 6));
    expect(areaOf(path)).toBeCloseTo(areaOf(ellipse(0, 0, 10)) - areaOf(ellipse(0, 0, 6)), 3);
  });
});

describe("loop", () => {
  const circle = (n: number, r: number): number[] =>
    Array.from({ length: n }, (_, i) => i).flatMap((i) => [
      r * Math.cos((2 * Math.PI * i) / n),
      r * Math.sin((2 * Math.PI * i) / n),
    ]);

  it("goes through its points", () => {
    const given = [0, 0, 10, -2, 14, 8, 3, 12];
    const { points } = loop(given);
    const knots = [0, 1, 2, 3].flatMap((i) => [points[i * CURVE]! / 1000, points[i * CURVE + 1]! / 1000]);
    expect(knots).toEqual(given);
  });

  it("comes closer to a circle the more points of it are given", () => {
    const error = (n: number): number =>
      Math.max(
        ...flatten(loop(circle(n, 50)), 0.5).flatMap((ring) =>
          Array.from({ length: ring.length / 2 }, (_, i) =>
            Math.abs(Math.hypot(ring[2 * i]!, ring[2 * i + 1]!) / 50000 - 1),
          ),
        ),
      );
    expect(error(6)).toBeLessThan(0.01);
    expect(error(12)).toBeLessThan(error(6) / 8);
    expect(error(12)).toBeLessThan(6e-4);
  });

  it("has no corner and no jump of curvature at a point", () => {
    const { points } = loop([0, 0, 30, -8, 42, 24, 9, 36, -5, 20]);
    const n = points.length / CURVE;
    const chord = (i: number): number => {
      const [a, b] = [(i % n) * CURVE, ((i + 1) % n) * CURVE];
      return Math.hypot(points[b]! - points[a]!, points[b + 1]! - points[a + 1]!);
    };
    for (let i = 0; i < n; i++)
      for (const axis of [0, 1]) {
        const at = (k: number): number => points[(k + points.length) % points.length]!;
        const here = i * CURVE + axis;
        const knot = at(here);
        const [out1, out2] = [at(here + 2), at(here + 4)];
        const [in1, in2] = [at(here - 2), at(here - 4)];
        const [before, after] = [chord(i + n - 1), chord(i)];
        expect(Math.abs((knot - in1) / before - (out1 - knot) / after)).toBeLessThan(1e-3);
        const bend = (a: number, b: number, c: number, h: number): number => (a - 2 * b + c) / (h * h);
        const jump = bend(in2, in1, knot, before) - bend(knot, out1, out2, after);
        expect(Math.abs(jump) * 1000).toBeLessThan(1e-3);
      }
  });
});
