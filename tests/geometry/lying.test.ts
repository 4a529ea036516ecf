import fc from "fast-check";
import polygonClipping, { type Polygon } from "polygon-clipping";
import { describe, expect, it } from "vitest";
import { evenOdd, unite } from "../../src/geometry/boolean.ts";
import { flatten, type Ring } from "../../src/geometry/flatten.ts";
import { lyingOf } from "../../src/geometry/lying.ts";
import { meetsItself, mostCrossings } from "../../src/geometry/meeting.ts";
import { nestingOf } from "../../src/geometry/nesting.ts";
import { outlineOfRings } from "../../src/geometry/outline.ts";
import { areaOf, joinPaths } from "../../src/geometry/path.ts";
import { ellipse } from "../../src/geometry/shapes.ts";

const box = (x: number, y: number, w: number, h: number, way: 1 | -1 = 1): Ring =>
  Float64Array.from(
    way > 0 ? [x, y, x + w, y, x + w, y + h, x, y + h] : [x, y, x, y + h, x + w, y + h, x + w, y],
  );
const lying = (one: readonly Ring[], other: readonly Ring[]): string =>
  lyingOf(outlineOfRings(one), outlineOfRings(other));

describe("how two outlines lie to each other", () => {
  const frame = [box(0, 0, 100, 100), box(20, 20, 60, 60, -1)];

  it("is told where their borders do not meet", () => {
    expect(lying([box(0, 0, 10, 10)], [box(20, 0, 10, 10)])).toBe("apart");
    expect(lying([box(5, 5, 2, 2)], [box(0, 0, 10, 10)])).toBe("within");
    expect(lying([box(0, 0, 10, 10)], [box(5, 5, 2, 2)])).toBe("around");
    // In the hole of a frame; a frame around another; two islands, one of which is inside.
    expect(lying([box(40, 40, 10, 10)], frame)).toBe("apart");
    expect(lying([box(5, 5, 5, 5)], frame)).toBe("within");
    expect(lying([box(-10, -10, 120, 120)], frame)).toBe("around");
    expect(lying([box(5, 5, 5, 5), box(200, 0, 5, 5)], frame)).toBe("open");
  });

  it("is open where they cross, touch at a corner, or share a side", () => {
    expect(lying([box(0, 0, 10, 10)], [box(5, 5, 10, 10)])).toBe("open");
    expect(lying([box(0, 0, 10, 10)], [box(10, 10, 10, 10)])).toBe("open");
    expect(lying([box(0, 0, 10, 10)], [box(10, 2, 10, 5)])).toBe("open");
    expect(lying([box(0, 0, 10, 10)], [box(0, 0, 10, 10)])).toBe("open");
  });

  // Areas of the intersection by polygon-clipping 0.15.7.
  it("agrees with what polygon-clipping finds that they share, wherever two boxes lie", () => {
    const side = fc.integer({ min: 1, max: 12 });
    const boxes = fc.tuple(side, side, side, side);
    const polygon = ([x, y, w, h]: readonly number[]): Polygon => [
      [
        [x!, y!],
        [x! + w!, y!],
        [x! + w!, y! + h!],
        [x!, y! + h!],
        [x!, y!],
      ],
    ];
    fc.assert(
      fc.property(boxes, boxes, (p, q) => {
        const shared = polygonClipping.intersection(polygon(p), polygon(q));
        const found = lying([box(...p)], [box(...q)]);
        if (found === "apart") expect(shared).toEqual([]);
        if (found === "within") expect(shared).toEqual([polygon(p)]);
        if (found === "around") expect(shared).toEqual([polygon(q)]);
      }),
      { numRuns: 300 },
    );
  });
});

describe("rings that meet nowhere", () => {
  it("are kept, turned or left out by how they lie in each other", () => {
    const [outer, hole, island] = [box(0, 0, 100, 100), box(10, 10, 80, 80, -1), box(20, 20, 40, 40)];
    expect(nestingOf([outer, hole, island], "nonzero", 1)).toEqual([1, 1, 1]);
    // The same way round as what it lies in: nonzero filling does not see it, even-odd takes it for a hole.
    const inner = box(10, 10, 80, 80);
    expect(nestingOf([outer, inner], "nonzero", 1)).toEqual([1, 0]);
    expect(nestingOf([outer, inner], "evenodd", 1)).toEqual([1, -1]);
    expect(nestingOf([box(0, 0, 9, 9, -1), box(20, 0, 9, 9)], "nonzero", 1)).toEqual([-1, 1]);
    expect(nestingOf([outer, box(200, 0, 1, 1)], "nonzero", 4)).toEqual([1, 0]);
  });

  it("are no matter of nesting where a side meets another, runs back, or is none", () => {
    const bow = Float64Array.from([0, 0, 10, 10, 10, 0, 0, 10]);
    const spike = Float64Array.from([0, 0, 10, 0, 10, 10, 10, 4, 0, 10]);
    const pinched = Float64Array.from([0, 0, 10, 0, 5, 5, 10, 10, 0, 10, 5, 5]);
    const doubled = Float64Array.from([0, 0, 10, 0, 10, 0, 10, 10]);
    for (const ring of [bow, spike, pinched, doubled]) expect(meetsItself(outlineOfRings([ring]))).toBe(true);
    expect(meetsItself(outlineOfRings([box(0, 0, 9, 9)]))).toBe(false);
    expect(nestingOf([box(0, 0, 9, 9), box(9, 0, 9, 9)], "nonzero", 1)).toBeUndefined();
  });

  it("keep the author's own points, whichever way they ran, and have the area they should", () => {
    const [disc, hole] = [ellipse(0, 0, 10), ellipse(0, 0, 4)];
    const far = ellipse(40, 0, 5);
    const ring = evenOdd(joinPaths([disc, hole, far]));
    expect(ring.contours).toEqual([...disc.contours, ...hole.contours, ...far.contours]);
    expect(areaOf(ring)).toBeCloseTo(areaOf(disc) - areaOf(hole) + areaOf(far), 6);
    expect(unite([disc, hole, far]).contours).toEqual([...disc.contours, ...far.contours]);
  });
});

it("crossings are never more than their bound", () => {
  const star = Float64Array.from([0, -100, 59, 81, -95, -31, 95, -31, -59, 81]);
  expect(mostCrossings(outlineOfRings([star]))).toBeGreaterThanOrEqual(5);
  const many = Array.from({ length: 1500 }, (_, i) => flatten(ellipse(i, 0, 3), 1)).flat();
  expect(mostCrossings(outlineOfRings(many))).toBe(Infinity);
});
