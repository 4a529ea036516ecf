import { describe, expect, it } from "vitest";
import { flatten, ringArea } from "../../../src/geometry/flatten.ts";
import { areaOf } from "../../../src/geometry/path.ts";
import { dot, ring, star } from "../../../src/motif/primitives/index.ts";
import { drawn, points, shape } from "./measure.ts";

/**
 * Area of a circle of radius 1 drawn with four cubics of handle k, worked out by Green's theorem:
 * 2 + 2.4 k - 0.6 k². With the usual k = 0.5522847498 it is 3.1424475…, 2.7e-4 more than pi.
 */
const K = 0.5522847498;
const DISC = 2 + 2.4 * K - 0.6 * K * K;

describe("areas of primitives", () => {
  it("a dot has the area of four cubics, and of a circle to 3 parts in 10 000", () => {
    const area = areaOf(drawn(dot({ size: 20 })).outline) / 1e6;
    expect(Math.abs(area / (100 * DISC) - 1)).toBeLessThan(1e-5);
    expect(Math.abs(area / (100 * Math.PI) - 1)).toBeLessThan(3e-4);
  });

  it("a dot's edge is nowhere farther from its circle than 2.8e-4 of the radius", () => {
    // The error of this approximation is 2.73e-4 (Goldapp, 1991, and textbooks since); 1 µm for rounding.
    for (const [x, y] of points(drawn(dot({ size: 80 })).outline)) {
      const error = Math.hypot(x, y) / 40 - 1;
      expect(error).toBeGreaterThan(-0.3e-4);
      expect(error).toBeLessThan(2.8e-4);
    }
  });

  it("an oval has the area pi a b", () => {
    const area = areaOf(drawn(dot({ size: 20, width: 0.4 })).outline) / 1e6;
    expect(Math.abs(area / (DISC * 40) - 1)).toBeLessThan(1e-5);
  });

  it.each([0.2, 0.6, 0.85])(
    "a ring with a hole of %f has the area pi (R² - r²), the hole taken out",
    (inner) => {
      const path = shape(drawn(ring({ size: 40, inner })), "ring");
      expect(Math.abs(areaOf(path) / 1e6 / (400 * DISC * (1 - inner * inner)) - 1)).toBeLessThan(1e-4);
      const [outer, hole] = flatten(path, 1).map(ringArea);
      expect(outer).toBeGreaterThan(0);
      expect(hole).toBeLessThan(0);
    },
  );

  it("a crisp star has nearly the area n R r sin(pi / n) of a sharp one", () => {
    const area = areaOf(drawn(star({ size: 100, points: 6, inner: 0.5, roundness: 0 })).outline) / 1e6;
    const sharp = 6 * 50 * 25 * Math.sin(Math.PI / 6);
    expect(Math.abs(area / sharp - 1)).toBeLessThan(0.02);
  });
});
