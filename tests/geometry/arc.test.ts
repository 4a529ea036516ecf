import fc from "fast-check";
import { SVGPathData } from "svg-pathdata";
import { describe, expect, it } from "vitest";
import { drawArc } from "../../src/geometry/arc.ts";
import { sketch } from "../../src/geometry/sketch.ts";
import { extentOf } from "../../src/motif/artwork/extent.ts";

const arcTo = (
  rx: number,
  ry: number,
  turn: number,
  large: boolean,
  sweep: boolean,
  x: number,
  y: number,
) => {
  const to = sketch();
  to.move(0, 0);
  drawArc(to, { rx, ry, turn, large, sweep, x, y });
  return to.done()[0]!.points;
};

describe("an elliptical arc", () => {
  // svg-pathdata 7.2.0 converts arcs by another route (angles instead of vectors).
  it("covers the same box as svg-pathdata's conversion of it", () => {
    const length = fc.double({ min: 0.5, max: 40, noNaN: true });
    const place = fc.double({ min: -50, max: 50, noNaN: true }).map((v) => Math.round(v * 100) / 100);
    fc.assert(
      fc.property(
        fc.tuple(length, length, fc.integer({ min: -180, max: 180 })),
        fc.tuple(fc.boolean(), fc.boolean(), place, place),
        ([rx, ry, turn], [large, sweep, x, y]) => {
          fc.pre(Math.abs(x) + Math.abs(y) > 0.1);
          const ours = extentOf([[{ points: arcTo(rx, ry, turn, large, sweep, x, y), closed: false }]]);
          const data = `M0 0A${rx} ${ry} ${turn} ${large ? 1 : 0} ${sweep ? 1 : 0} ${x} ${y}`;
          const theirs = new SVGPathData(data).toAbs().aToC().getBounds();
          // Both stray from the true arc, by up to 2.8e-4 of a radius, at different places; tiny chords of large
          // arcs grow nothing, so the largest radius in play is that or half the chord.
          const radius = Math.max(rx, ry, (Math.abs(x) + Math.abs(y)) * Math.max(rx / ry, ry / rx));
          for (const key of ["minX", "minY", "maxX", "maxY"] as const)
            expect(Math.abs(ours[key] - theirs[key])).toBeLessThan(6e-4 * radius);
        },
      ),
      { seed: 20, numRuns: 300 },
    );
  });

  it("is a quarter circle to 2.8e-4 of its radius", () => {
    const [x0, y0, x1, y1, x2, y2, x3, y3] = arcTo(10, 10, 0, false, true, 10, 10);
    for (let t = 0; t <= 1; t += 0.05) {
      const s = 1 - t;
      const at = (a: number, b: number, c: number, d: number) =>
        s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
      const [x, y] = [at(x0!, x1!, x2!, x3!), at(y0!, y1!, y2!, y3!) - 10];
      expect(Math.abs(Math.sqrt(x * x + y * y) - 10)).toBeLessThan(2.8e-3);
    }
  });

  it("ends exactly where it should, and is a straight side without a radius", () => {
    expect(arcTo(3, 7, 20, true, false, 4.1, -2.3).slice(-2)).toEqual([4.1, -2.3]);
    expect(arcTo(0, 7, 20, true, false, 4, 2)).toEqual([0, 0, 0, 0, 4, 2, 4, 2]);
    expect(arcTo(3, 7, 20, true, false, 0, 0)).toEqual([0, 0]);
  });

  it("grows radii that are too small for its chord", () => {
    const { minY, maxY } = extentOf([[{ points: arcTo(1, 1, 0, false, true, 20, 0), closed: false }]]);
    expect(minY).toBeCloseTo(-10, 2);
    expect(maxY).toBe(0);
  });
});
