import { Clipper, FillRule } from "clipper2-ts";
import { describe, expect, it } from "vitest";
import { ringsArea, subtractRings, uniteRings } from "../../src/geometry/clip.ts";

/** A triangle whose upper side overshoots to the left and comes back. */
const points = [10_982, 15_000, -10_982, 15_000, -9381, 15_000, 8308, -4890];
const AREA = ((10_982 + 9381) * (15_000 + 4890)) / 2;

describe("a side that runs back along itself", () => {
  it("still upsets clipper2-ts 2.0.1; if this fails, the care taken of it can go", () => {
    const path = [0, 2, 4, 6].map((i) => ({ x: points[i]!, y: points[i + 1]! }));
    const union = Clipper.union([path], FillRule.NonZero);
    expect(union.reduce((sum, ring) => sum + Clipper.area(ring), 0)).toBeLessThan(0);
  });

  it("changes nothing, wherever the ring starts and whichever way it runs", () => {
    for (let start = 0; start < 8; start += 2) {
      const turned = [...points.slice(start), ...points.slice(0, start)];
      const backwards = [6, 4, 2, 0].flatMap((i) => [turned[i]!, turned[i + 1]!]);
      for (const ring of [turned, backwards].map((list) => Float64Array.from(list))) {
        expect(ringsArea(uniteRings([ring]))).toBe(AREA);
        expect(ringsArea(subtractRings([ring], [Float64Array.from([0, 0, 1, 0, 1, 1])]))).toBeCloseTo(
          AREA,
          -2,
        );
      }
    }
  });

  it("leaves nothing of a ring that is all spike", () => {
    expect(uniteRings([Float64Array.from([0, 0, 500, 0, 900, 0, 200, 0])])).toEqual([]);
  });
});
