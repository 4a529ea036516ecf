import { describe, expect, it } from "vitest";
import { ringsArea } from "../../src/geometry/clip.ts";
import { growRings } from "../../src/geometry/grow.ts";

const square = (from: number, to: number): Float64Array =>
  Float64Array.from([from, from, to, from, to, to, from, to]);

describe("polygons grown on all sides", () => {
  // Steiner's formula for a convex body: area + perimeter · r + π r².
  it("gain what Steiner's formula says", () => {
    const grown = growRings([square(0, 10_000)], 1000, 1);
    expect(ringsArea(grown) / (100e6 + 40e6 + Math.PI * 1e6)).toBeCloseTo(1, 4);
  });

  it("let their holes shrink, with sharp corners, and close", () => {
    const hole = Float64Array.from([3000, 3000, 3000, 7000, 7000, 7000, 7000, 3000]);
    const ring = [square(0, 10_000), hole];
    expect(ringsArea(ring)).toBe(84e6);
    const outer = ringsArea(growRings([square(0, 10_000)], 500, 1));
    expect(outer - ringsArea(growRings(ring, 500, 1))).toBeCloseTo(9e6, -4);
    expect(growRings(ring, 2500, 1)).toHaveLength(1);
  });

  it("are not held up by a ring of a point or two, as a small loop becomes when it is flattened", () => {
    const loop = Float64Array.from([50, 50]);
    expect(growRings([square(0, 10_000), loop], 500, 1)).toEqual(growRings([square(0, 10_000)], 500, 1));
    expect(growRings([loop], 500, 1)).toEqual([]);
  });
});
