import { describe, expect, it } from "vitest";
import {
  evenOddRings,
  intersectRings,
  pathOfRings,
  ringsArea,
  ringsPerimeter,
  subtractRings,
  uniteRings,
} from "../../src/geometry/clip.ts";
import { flatten } from "../../src/geometry/flatten.ts";
import { rectangle } from "../given.ts";

const square = (x: number, y: number, size: number): Float64Array[] =>
  flatten(rectangle(x, y, size, size), 1);

describe("polygons", () => {
  const [a, b] = [square(0, 0, 10), square(5, 5, 10)];

  it("obey the law of areas: |a| + |b| = |a or b| + |a and b|", () => {
    expect(ringsArea(uniteRings([...a, ...b]))).toBe(175e6);
    expect(ringsArea(intersectRings(a, b))).toBe(25e6);
    expect(ringsArea(subtractRings(a, b))).toBe(75e6);
    expect(ringsArea(evenOddRings([...a, ...b]))).toBe(150e6);
  });

  it("come out with holes negative", () => {
    const ring = subtractRings(square(0, 0, 10), square(2, 2, 3));
    expect(ring.map((r) => Math.sign(ringsArea([r]))).sort()).toEqual([-1, 1]);
    expect(ringsArea(ring)).toBe(91e6);
    expect(ringsPerimeter(ring)).toBe(52_000);
  });

  it("are rounded at the boundary: the engine itself does not", () => {
    const skew = uniteRings([Float64Array.of(0.4, 0.4, 1000.6, 0.4, 1000.6, 999.5)]);
    expect([...skew[0]!].every(Number.isInteger)).toBe(true);
  });

  it("become paths of straight sides, closed, without specks of one or two points", () => {
    const path = pathOfRings([Float64Array.of(0, 0, 9, 0, 9, 9), Float64Array.of(0, 0, 5, 5)]);
    expect(path.contours).toEqual([3]);
    expect([...path.points.slice(12)]).toEqual([9, 9, 9, 9, 0, 0]);
  });
});
