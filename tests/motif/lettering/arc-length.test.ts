import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Cubic, measure } from "../../../src/motif/lettering/arc-length.ts";

/** Speed of a cubic at t. */
function speed([x0, y0, x1, y1, x2, y2, x3, y3]: Cubic, t: number): number {
  const s = 1 - t;
  const d = (a: number, b: number, c: number, e: number): number =>
    3 * (s * s * (b - a) + 2 * s * t * (c - b) + t * t * (e - c));
  return Math.hypot(d(x0, x1, x2, x3), d(y0, y1, y2, y3));
}

/** Its length up to t, by Simpson's rule. */
function simpson(cubic: Cubic, end: number, steps = 4000): number {
  const h = end / steps;
  let sum = speed(cubic, 0) + speed(cubic, end);
  for (let k = 1; k < steps; k++) sum += (k % 2 ? 4 : 2) * speed(cubic, k * h);
  return (sum * h) / 3;
}

const pointOn = ([x0, y0, x1, y1, x2, y2, x3, y3]: Cubic, t: number): [number, number] => {
  const s = 1 - t;
  const at = (a: number, b: number, c: number, e: number): number =>
    s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * e;
  return [at(x0, x1, x2, x3), at(y0, y1, y2, y3)];
};

describe("the length of cubics", () => {
  it("is that of a parabola, which has a closed form", () => {
    // y = x² from 0 to 1: √5/2 + arsinh(2)/4.
    const parabola: Cubic = [0, 0, 1 / 3, 0, 2 / 3, 1 / 3, 1, 1];
    expect(measure([parabola]).length).toBeCloseTo(Math.sqrt(5) / 2 + Math.asinh(2) / 4, 7);
  });

  it("is exact for straight lines, however they are parametrised", () => {
    const { length, at } = measure([
      [0, 0, 0, 0, 30, 40, 30, 40],
      [30, 40, 30.1, 40, 30.2, 40, 50, 40],
    ]);
    expect(length).toBeCloseTo(70, 9);
    expect(at(25)[0]).toBeCloseTo(15, 9);
    expect(at(25)[1]).toBeCloseTo(20, 9);
    expect(at(60)[0]).toBeCloseTo(40, 9);
  });

  it("agrees with Simpson's rule for any cubic of ordinary size, and so do the points along it", () => {
    const v = fc.double({ min: -100, max: 100, noNaN: true });
    let worst = 0;
    fc.assert(
      fc.property(
        fc.tuple(v, v, v, v, v, v, v, v),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (given, t) => {
          const cubic = given as unknown as Cubic;
          const { length, at } = measure([cubic]);
          const whole = simpson(cubic, 1);
          worst = Math.max(worst, Math.abs(length - whole) / whole);
          expect(Math.abs(length - whole)).toBeLessThan(1e-4 + 1e-6 * whole);
          const [x, y] = at(simpson(cubic, t));
          const [px, py] = pointOn(cubic, t);
          // At a cusp the speed is nearly zero: Simpson's rule itself is off there.
          expect(Math.hypot(x - px, y - py)).toBeLessThan(2e-3);
        },
      ),
      { seed: 5, numRuns: 300 },
    );
    if (process.env["SHOW"]) console.log("worst", worst);
  });

  it("runs through a cusp and stops at the ends", () => {
    const cusp: Cubic = [0, 0, 10, 10, 0, 10, 10, 0];
    const { length, at } = measure([cusp]);
    expect(length).toBeCloseTo(simpson(cusp, 1), 4);
    expect(at(-5)).toEqual([0, 0]);
    expect(at(length + 5)[0]).toBeCloseTo(10, 9);
    expect(measure([]).length).toBe(0);
    expect(measure([[3, 3, 3, 3, 3, 3, 3, 3]]).length).toBe(0);
  });
});
