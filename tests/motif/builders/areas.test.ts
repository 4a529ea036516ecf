// Areas of what the builders draw, against closed forms.
import { describe, expect, it } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import * as shapes from "../../../src/shapes.ts";
import { extent } from "../primitives/measure.ts";

const mm2 = (path: Parameters<typeof areaOf>[0]): number => areaOf(path) / 1e6;
/** Within a share of what is wanted. */
const near = (measured: number, wanted: number, share: number): void =>
  expect(Math.abs(measured / wanted - 1), `${measured} for ${wanted}`).toBeLessThan(share);
/** Area and perimeter of a regular polygon whose corners are `R` from its middle. */
const regular = (n: number, R: number): readonly [area: number, perimeter: number] => [
  (n / 2) * R * R * Math.sin((2 * Math.PI) / n),
  2 * n * R * Math.sin(Math.PI / n),
];

describe("areas", () => {
  it.each([1, 7.5, 60])("of a circle of radius %d mm: pi r², to 3 parts in 10 000 (four cubics)", (r) =>
    near(mm2(shapes.ellipse(3, 4, r)), Math.PI * r * r, 3e-4),
  );

  it("of an ellipse: pi a b", () => near(mm2(shapes.ellipse(0, 0, 24, 7)), Math.PI * 24 * 7, 3e-4));

  it("of a smooth closed curve through twelve points of a circle: the circle's, to 5 parts in 10 000", () => {
    const points = Array.from({ length: 12 }, (_, k) => (k / 6) * Math.PI).flatMap((a) => [
      20 * Math.cos(a),
      20 * Math.sin(a),
    ]);
    near(mm2(shapes.blob(points)), Math.PI * 400, 5e-4);
  });

  it.each([3, 4, 5, 6, 12, 120])("of a regular polygon of %i sides: n/2 R² sin(2 pi / n)", (n) =>
    near(mm2(shapes.polygon(n, 30)), regular(n, 30)[0], 1e-4),
  );

  it("of a polygon with round corners: between the sharp one's and the inner circle's", () => {
    const area = mm2(shapes.polygon(5, 30, 8));
    expect(area).toBeLessThan(regular(5, 30)[0]);
    const inner = 30 * Math.cos(Math.PI / 5);
    expect(area).toBeGreaterThan(Math.PI * inner * inner);
    expect(extent(shapes.polygon(4, 30, 0.001)).width).toBeCloseTo(60, 1);
  });

  it.each([0.6, 3, 9])("of a straight stroke %d mm wide: L w + pi w² / 4", (w) =>
    near(mm2(shapes.brush(shapes.curve([0, 0, 30, 40]), w)), 50 * w + (Math.PI * w * w) / 4, 3e-4),
  );

  it("of a stroke along a half circle: pi r w + pi w² / 4 (Pappus)", () => {
    const points = Array.from({ length: 17 }, (_, k) => (k / 16) * Math.PI).flatMap((a) => [
      20 * Math.cos(a),
      20 * Math.sin(a),
    ]);
    near(mm2(shapes.brush(shapes.curve(points), 4)), Math.PI * 20 * 4 + Math.PI * 4, 1e-3);
  });

  it("of a stroke that tapers evenly: the trapezium and two half discs", () =>
    near(mm2(shapes.brush(shapes.curve([0, 0, 0, 100]), [6, 2])), 400 + (Math.PI / 2) * (9 + 1), 1e-3));
});

describe("what is offset", () => {
  // Steiner's formula for convex shapes (J. Steiner, 1840; e.g. Santaló, Integral Geometry, 1976, I.1.3).
  const steiner = (A: number, P: number, d: number): number => A + P * d + Math.PI * d * d;

  it.each([0.2, 1, 8])("by %d mm outwards has the area A + P d + pi d²: circle, square, pentagon", (d) => {
    near(mm2(shapes.outline(shapes.ellipse(0, 0, 15), d)), steiner(Math.PI * 225, 30 * Math.PI, d), 5e-4);
    for (const n of [4, 5])
      near(mm2(shapes.outline(shapes.polygon(n, 20), d)), steiner(...regular(n, 20), d), 5e-4);
  });

  it("outwards, for an ellipse, with Ramanujan's perimeter", () => {
    const [a, b] = [20, 8];
    const h = ((a - b) / (a + b)) ** 2;
    const P = Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
    near(mm2(shapes.outline(shapes.ellipse(0, 0, a, b), 2)), steiner(Math.PI * a * b, P, 2), 5e-4);
  });

  it("inwards, for a square, leaves a smaller square with sharp corners", () => {
    const side = 20 * Math.SQRT2;
    near(mm2(shapes.inset(shapes.polygon(4, 20), 3)), (side - 6) ** 2, 5e-4);
  });

  it("inwards by more than its half width is gone", () => {
    expect(shapes.inset(shapes.ellipse(0, 0, 5), 6).contours).toEqual([]);
  });

  it("keeps curves: an outlined circle has few nodes", () => {
    expect(shapes.outline(shapes.ellipse(0, 0, 15), 2).points.length / 6).toBeLessThan(24);
  });

  it("by nothing is itself, to 3 parts in 10 000", () => {
    const leaf = shapes.halves({ tip: true, foot: true }, [0, -20, 8, -4, 0, 20]);
    near(mm2(shapes.outline(leaf, 0)), mm2(leaf), 3e-4);
  });
});
