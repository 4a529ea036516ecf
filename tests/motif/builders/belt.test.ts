import { describe, expect, it } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import { belt } from "../../../src/motif/builders/belt.ts";
import { toPath } from "../../../src/motif/builders/chain.ts";
import { extent } from "../primitives/measure.ts";

const area = (wheels: Parameters<typeof belt>[0]): number => areaOf(toPath(belt(wheels))) / 1e6;

describe("belt", () => {
  it("around two equal wheels is a bar with two half discs", () => {
    const bar = area([
      { x: 0, y: 0, r: 5 },
      { x: 40, y: 0, r: 5 },
    ]);
    expect(bar).toBeCloseTo(400 + 25 * Math.PI, 0);
  });

  it("around four wheels clockwise is a square with round corners", () => {
    const square = area([
      { x: -20, y: -20, r: 5 },
      { x: 20, y: -20, r: 5 },
      { x: 20, y: 20, r: 5 },
      { x: -20, y: 20, r: 5 },
    ]);
    expect(square).toBeCloseTo(2500 - (100 - 25 * Math.PI), 0);
  });

  it("bends the other way around a wheel with a negative radius", () => {
    const corner = { x: 20, y: 20, r: 5 };
    const hollow = [{ x: -20, y: 20, r: 5 }, { x: 0, y: -40, r: 5 }, corner, { x: 0, y: 8, r: -5 }];
    const full = [{ x: -20, y: 20, r: 5 }, { x: 0, y: -40, r: 5 }, corner];
    expect(area(hollow)).toBeLessThan(area(full));
  });

  it("reaches as far as its wheels", () => {
    const { width, height } = extent(
      toPath(
        belt([
          { x: 0, y: -10, r: 2 },
          { x: 12, y: 10, r: 4 },
          { x: -12, y: 10, r: 4 },
        ]),
      ),
    );
    expect(width).toBeCloseTo(32, 1);
    expect(height).toBeCloseTo(26, 1);
  });
});
