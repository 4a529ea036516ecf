import BufferOp from "jsts/org/locationtech/jts/operation/buffer/BufferOp.js";
import { describe, expect, it } from "vitest";
import { fitRing } from "../../src/geometry/fit.ts";
import { flatten, type Ring } from "../../src/geometry/flatten.ts";
import { offsetPath } from "../../src/geometry/offset.ts";
import { areaOf, CURVE, type Path } from "../../src/geometry/path.ts";
import { loop } from "../../src/geometry/shapes.ts";
import { polygonOf } from "./jsts.ts";

const circle = (r: number, sides: number): Ring =>
  Float64Array.from(
    Array.from({ length: sides }, (_, k) => (k / sides) * 2 * Math.PI).flatMap((a) => [
      Math.round(r * Math.cos(a)),
      Math.round(r * Math.sin(a)),
    ]),
  );
const curves = (path: Path): number => path.points.length / CURVE;

describe("fitRing", () => {
  it("makes a circle of a few curves, within the tolerance", () => {
    const fitted = fitRing(circle(20_000, 200), 3);
    expect(curves(fitted)).toBeLessThan(16);
    for (const ring of flatten(fitted, 1))
      for (let i = 0; i < ring.length; i += 2)
        expect(Math.abs(Math.hypot(ring[i]!, ring[i + 1]!) - 20_000)).toBeLessThan(8);
  });

  it("keeps corners to the µm, and straight sides straight", () => {
    const fitted = fitRing(Float64Array.from([0, 0, 9000, 0, 9000, 5000, 0, 5000]), 3);
    expect(curves(fitted)).toBe(4);
    expect(areaOf(fitted)).toBe(45_000_000);
  });
});

describe("offsetPath", () => {
  // A bean, with a hollow side.
  const bean = loop([0, -10, 9, -6, 12, 4, 4, 9, 1, 3, -6, 5, -10, -2]);
  const [ring] = flatten(bean, 1);

  it.each([-2500, -900, 300, 1200, 4000])("by %i µm has the area of jsts' buffer", (by) => {
    const buffer = BufferOp.bufferOp(polygonOf([ring!]), by, 64) as { getArea(): number };
    expect(Math.abs(areaOf(offsetPath(bean, by)) / buffer.getArea() - 1)).toBeLessThan(1e-3);
  });

  it("is Béziers, few of them", () => {
    expect(curves(offsetPath(bean, 1200))).toBeLessThan(40);
  });

  it("may fall into pieces, or vanish", () => {
    const hourglass = loop([-10, -6, 0, -1.2, 10, -6, 10, 6, 0, 1.2, -10, 6]);
    expect(offsetPath(hourglass, -2000).contours.length).toBe(2);
    expect(offsetPath(hourglass, -9000).contours.length).toBe(0);
  });
});
