import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  compose,
  identity,
  movePath,
  placing,
  reversePath,
  transformPath,
} from "../../src/geometry/matrix.ts";
import { areaOf, type Path } from "../../src/geometry/path.ts";
import { ellipse, holed } from "../../src/geometry/shapes.ts";
import { drawMotif } from "../../src/motif/draw.ts";
import { createRandom } from "../../src/seed/random.ts";
import { pebble, polygon } from "../given.ts";

const stone: Path = drawMotif(pebble(), createRandom("x"))[0]!.outline;
const first = (path: Path): number[] => [...path.points.slice(0, 2)];

describe("placing", () => {
  // y runs down the page, so a quarter turn clockwise takes "right" to "down" (SVG 2, 8.5: rotate).
  it("turns clockwise on the page by quarters, exactly", () => {
    const flag = polygon(3, 1, 4, 1, 4, 2);
    expect(first(transformPath(flag, placing(0, 0, 0.25)))).toEqual([-1000, 3000]);
    expect(first(transformPath(flag, placing(0, 0, 0.5)))).toEqual([-3000, -1000]);
    expect(first(transformPath(flag, placing(500, -500, 0.75)))).toEqual([1500, -3500]);
  });

  it("mirrors first, then scales and turns, then moves", () => {
    const flag = polygon(3, 1, 4, 1, 4, 2);
    expect(first(transformPath(flag, placing(100, 0, 0, 2, true)))).toEqual([-5900, 2000]);
    expect(first(transformPath(flag, placing(0, 0, 0.25, 1, true)))).toEqual([-1000, -3000]);
  });

  it("keeps outer contours positive when it mirrors", () => {
    expect(areaOf(stone)).toBeGreaterThan(0);
    expect(areaOf(transformPath(stone, placing(0, 0, 0, 1, true)))).toBe(areaOf(stone));
  });

  it("changes areas by the square of the scale", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        (turn, scale) => {
          const got = areaOf(transformPath(ellipse(0, 0, 40), placing(7, 7, turn, scale)));
          expect(got / (areaOf(ellipse(0, 0, 40)) * scale * scale)).toBeCloseTo(1, 3);
        },
      ),
      { seed: 12, numRuns: 100 },
    );
  });
});

describe("compose", () => {
  it("does one after the other", () => {
    const [turn, move] = [placing(0, 0, 0.25), placing(1000, 2000)];
    const flag = polygon(3, 1, 4, 1, 4, 2);
    expect(transformPath(flag, compose(turn, move))).toEqual(transformPath(transformPath(flag, turn), move));
    expect(compose(identity, move)).toEqual(move);
    expect(compose(move, identity)).toEqual(move);
    expect(transformPath(flag, compose(move, turn))).not.toEqual(transformPath(flag, compose(turn, move)));
  });
});

describe("moving and reversing", () => {
  it("moves exactly, there and back", () => {
    expect(movePath(movePath(stone, 123_457, -9), -123_457, 9)).toEqual(stone);
  });

  it("reverses twice into the same points, each contour on its own", () => {
    const ring = holed(ellipse(0, 0, 10), ellipse(0, 0, 5));
    expect(reversePath(reversePath(ring))).toEqual(ring);
    expect(areaOf(reversePath(ring))).toBeCloseTo(-areaOf(ring), 3);
    expect(first(reversePath(ring))).toEqual(first(ring));
  });
});
