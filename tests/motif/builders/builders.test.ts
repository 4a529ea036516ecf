// The builders that plugin authors and scripts draw with.
import { Clipper, EndType, JoinType } from "clipper2-ts";
import fc from "fast-check";
import polygonClipping from "polygon-clipping";
import { describe, expect, it } from "vitest";
import { flatten } from "../../../src/geometry/flatten.ts";
import { placing, transformPath } from "../../../src/geometry/matrix.ts";
import { areaOf, type Path } from "../../../src/geometry/path.ts";
import { defineMotif } from "../../../src/motif/define.ts";
import { tulip } from "../../../src/motif/primitives/index.ts";
import * as shapes from "../../../src/shapes.ts";
import { refusal } from "../../given.ts";
import { areaOfPolygons, crossedArea, drawn, extent, points, polygons } from "../primitives/measure.ts";

const petal = (): Path => shapes.halves({ tip: true, foot: true }, [0, -12, 3, -7, 0, -2]);
const joint = (one: Path, two: Path): number =>
  areaOfPolygons(polygonClipping.intersection(polygons(one), polygons(two)));
/** Least distance in mm between points of two paths, flattened to 1 µm. */
const apart = (one: Path, two: Path): number => {
  const others = points(two);
  return Math.min(
    ...points(one).map(([x, y]) => Math.min(...others.map(([u, v]) => Math.hypot(x - u, y - v)))),
  );
};

describe("curve, contour and halves", () => {
  it("go through the points given", () => {
    const through = [0, 0, 10, 4, 18, -3, 30, 5];
    const found = shapes.curve(through);
    for (let k = 0; k < 4; k++)
      expect([found[6 * k], found[6 * k + 1]]).toEqual(through.slice(2 * k, 2 * k + 2));
  });

  it("run smoothly: slopes on both sides of an inner point agree", () => {
    const c = shapes.curve([0, 0, 10, 4, 18, -3, 30, 5]);
    for (const k of [6, 12]) {
      const [ax, ay, bx, by] = [
        c[k]! - c[k - 2]!,
        c[k + 1]! - c[k - 1]!,
        c[k + 2]! - c[k]!,
        c[k + 3]! - c[k + 1]!,
      ];
      expect(Math.abs(ax * by - ay * bx) / Math.hypot(ax, ay) / Math.hypot(bx, by)).toBeLessThan(1e-9);
    }
  });

  it("close with a straight side, and make corners where runs meet", () => {
    const box = shapes.contour([0, 0, 10, 0], [10, 6], [0, 6]);
    expect(areaOf(box) / 1e6).toBeCloseTo(60, 6);
  });

  it("mirror a half to the µm", () => {
    for (const ends of [{}, { tip: true }, { foot: true }, { tip: true, foot: true }]) {
      const whole = shapes.halves(ends, [0, -20, 6, -12], [9, 2, 0, 14]);
      const flipped = transformPath(whole, placing(0, 0, 0, 1, true));
      expect(areaOfPolygons(polygonClipping.xor(polygons(whole), polygons(flipped)))).toBeLessThan(0.05);
      expect(crossedArea(whole)).toBeLessThan(1e-6);
    }
  });

  it("are round on the axis, or pointed, as asked", () => {
    const topWidth = (tip: boolean): number => {
      const all = points(shapes.halves({ tip }, [0, -20, 8, -4, 0, 20]));
      const near = all.filter(([, y]) => y < -19.8).map(([x]) => x);
      return Math.max(...near) - Math.min(...near);
    };
    expect(topWidth(false)).toBeGreaterThan(2 * topWidth(true));
  });

  it("refuse what is no curve", () => {
    expect(() => shapes.curve([1, 2])).toThrow(/2 points or more/);
    expect(() => shapes.curve([1, 2, 3])).toThrow(/2 points or more/);
    expect(() => shapes.blob([0, 0, 1, Number.NaN, 2, 2])).toThrow(/a coordinate is NaN/);
    expect(() => shapes.contour()).toThrow(/no points/);
    expect(() => shapes.halves({}, [1, 0, 5, 5, 0, 9])).toThrow(/axis/);
    expect(() => shapes.polygon(2, 5)).toThrow(/sides/);
  });
});

describe("brush", () => {
  it("is nowhere under the thickness given, whatever widths are asked for", () => {
    const width = fc.double({ min: 0, max: 4, noNaN: true });
    const along = shapes.curve([0, 0, 12, 6, 24, -2, 40, 8]);
    fc.assert(
      fc.property(fc.array(width, { minLength: 1, maxLength: 7 }), (widths) => {
        const path = shapes.brush(along, widths, 0.8);
        // Worn down from both sides by all but 2 µm of half the thickness, it still holds together from end to end.
        const rings = flatten(path, 1).map((ring) =>
          Array.from({ length: ring.length / 2 }, (_, i) => ({ x: ring[2 * i]!, y: ring[2 * i + 1]! })),
        );
        const worn = Clipper.inflatePaths(rings, -396, JoinType.Round, EndType.Polygon, 2, 1);
        expect(worn).toHaveLength(1);
        const xs = worn[0]!.map(({ x }) => x / 1000);
        expect(Math.min(...xs)).toBeLessThan(0.1);
        expect(Math.max(...xs)).toBeGreaterThan(39.9);
      }),
      { seed: 11, numRuns: 40 },
    );
  });

  it("goes through every width, evenly spread", () => {
    const path = shapes.brush(shapes.curve([0, 0, 0, 60]), [1, 6, 2, 8, 1]);
    for (const [y, w] of [
      [15, 6],
      [30, 2],
      [45, 8],
    ] as const) {
      const xs = points(path)
        .filter((p) => Math.abs(p[1] - y) < 0.4)
        .map((p) => p[0]);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(w, 0);
    }
  });

  it("refuses widths that are none", () => {
    const along = shapes.curve([0, 0, 9, 9]);
    for (const widths of [[], [-1], [Number.NaN], [2, Infinity]])
      expect(() => shapes.brush(along, widths)).toThrow(/a width is/);
  });
});

describe("rosette", () => {
  it("has as many petals as asked, each with the petal's area", () => {
    const petals = shapes.rosette(petal(), 7);
    expect(petals).toHaveLength(7);
    for (const one of petals) expect(areaOf(one) / areaOf(petal())).toBeCloseTo(1, 3);
  });

  it("looks the same after a turn by one place", () => {
    const whole = shapes.outline(shapes.rosette(petal(), 5), 0);
    const on = transformPath(whole, placing(0, 0, 1 / 5));
    expect(areaOfPolygons(polygonClipping.xor(polygons(whole), polygons(on)))).toBeLessThan(0.3);
  });

  it("turns about its middle, and mirrors every other copy", () => {
    const away = shapes.rosette(petal(), 4, { about: [0, -20] });
    expect(extent(away[2]!).y).toBeCloseTo(-33, 1);
    const bent = shapes.contour([0, -2, 4, -8, 0, -14], [0, -2]);
    const [first, second] = shapes.rosette(bent, 2, { mirror: true });
    expect(Math.sign(extent(first!).x)).toBe(1);
    expect(Math.sign(extent(second!).x)).toBe(1);
  });

  it("refuses counts that are none", () => {
    for (const count of [0, 2.5, 361, Number.NaN])
      expect(() => shapes.rosette(petal(), count)).toThrow(/copies/);
    expect(() => shapes.rosette(petal(), 3, { mirror: true })).toThrow(/mirrored/);
  });
});

describe("branch", () => {
  const stem = shapes.curve([0, 40, 0, -40]);
  const speck = (): Path => shapes.ellipse(0, 0, 0.2);

  it("sets leaves evenly by the length of the curve, right and left in turn", () => {
    const feet = shapes.branch(stem, { leaf: speck, count: 5, from: 0, to: 1 }).map(extent);
    expect(feet.map(({ y }) => Math.round(y))).toEqual([40, 20, 0, -20, -40]);
    const tips = shapes
      .branch(stem, { leaf: () => shapes.ellipse(0, -5, 1), count: 4, angle: 0.25 })
      .map(extent);
    expect(tips.map(({ x }) => Math.round(x))).toEqual([5, -5, 5, -5]);
  });

  it("is even on an uneven curve too", () => {
    const arc = shapes.curve([0, 0, 1, 0, 3, 0, 40, 0]);
    const xs = shapes.branch(arc, { leaf: speck, count: 9, from: 0, to: 1 }).map((path) => extent(path).x);
    for (let k = 1; k < xs.length; k++) expect(xs[k]! - xs[k - 1]!).toBeCloseTo(5, 1);
  });

  it("sets two that face each other, mirror images", () => {
    const leaf = (): Path => shapes.contour([0, 0, 2, -4, 1, -9], [0, 0]);
    const [left, right] = shapes.branch(stem, { leaf, count: 1, arrangement: "opposite" });
    const flipped = transformPath(left!, placing(0, 0, 0, 1, true));
    expect(areaOfPolygons(polygonClipping.xor(polygons(flipped), polygons(right!)))).toBeLessThan(0.05);
  });

  it("refuses counts that are none", () => {
    expect(() => shapes.branch(stem, { leaf: speck, count: 0 })).toThrow(/places/);
  });
});

describe("knock-outs", () => {
  const back = shapes.ellipse(0, 0, 10);
  const front = shapes.ellipse(8, 0, 6);

  it("behind leaves just the gap asked for", () => {
    const cut = shapes.behind(back, front, 0.8);
    expect(apart(cut, front)).toBeGreaterThan(0.78);
    expect(apart(cut, front)).toBeLessThan(0.82);
    expect(joint(shapes.behind(back, front), front)).toBeLessThan(0.01);
  });

  it("within keeps what both cover", () => {
    const lens = shapes.within(back, front);
    expect(Math.abs(areaOf(lens) / 1e6 - joint(back, front))).toBeLessThan(0.06);
  });

  it("stack cuts each drawing under those in front of it, and leaves a drawing's own parts alone", () => {
    const flower = (x: number): { petal: Path; heart: Path } => ({
      petal: shapes.ellipse(x, 0, 6),
      heart: shapes.ellipse(x, 0, 2),
    });
    const { petal, heart } = shapes.stack([flower(0), flower(7), flower(14)], 0.5);
    expect(petal).toHaveLength(3);
    for (const [i, j] of [
      [0, 1],
      [1, 2],
    ] as const)
      expect(apart(petal[i]!, petal[j]!)).toBeGreaterThan(0.48);
    // The middle of the last flower lies on its petals, whole.
    expect(areaOf(heart[2]!) / 1e6).toBeCloseTo(Math.PI * 4, 1);
    expect(joint(petal[2]!, heart[2]!)).toBeCloseTo(Math.PI * 4, 1);
  });

  it("what is wholly covered is gone", () => {
    expect(shapes.stack([{ a: shapes.ellipse(0, 0, 2) }, { a: shapes.ellipse(0, 0, 5) }])["a"]).toHaveLength(
      1,
    );
  });
});

describe("a motif of one's own", () => {
  const posy = defineMotif({
    name: "quay/posy",
    about: "Five tulips tied into a posy, to see the builders together.",
    params: {},
    parts: ["stem", "leaf", "petal", "marking"],
    draw: (_params, tools) => {
      const head = shapes.place(shapes.drawingOf(tulip({ height: 30, leaves: 0 }), tools), { y: -13 });
      return shapes.bouquet([head, head, head, head, head], { reach: 34 }) as never;
    },
  });

  it("may gather others into a bouquet, each clear of those in front", () => {
    const motif = drawn(posy());
    expect(motif.shapes.map(({ role }) => role)).toEqual(["stem", "petal", "marking"]);
    const { width, height } = extent(motif.outline);
    expect(width).toBeGreaterThan(25);
    expect(height).toBeGreaterThan(50);
  });

  it("whose stems stop short of all flowers but their own", () => {
    const flowers = [5, 4, 6].map((r) => ({ petal: shapes.ellipse(0, 0, r) }));
    const { stem, petal } = shapes.bouquet(flowers, { reach: 24, gap: 0.7 });
    expect(petal).toHaveLength(3);
    // Those behind come first: the left one, the right one, then the middle one in front.
    [0, 2, 1].forEach((flower, k) => {
      for (const other of [0, 1, 2].filter((i) => i !== flower))
        expect(apart(stem[other]!, petal[k]!)).toBeGreaterThan(0.68);
    });
    expect(joint(stem[0]!, petal[0]!)).toBeGreaterThan(0.1);
    for (const behind of [0, 1]) expect(apart(petal[behind]!, petal[2]!)).toBeGreaterThan(0.68);
  });

  it("strays by the pattern's seed as all do", () => {
    expect(drawn(posy({ vary: 0.8, variants: 1 }), "a").shapes).not.toEqual(
      drawn(posy({ vary: 0.8, variants: 1 }), "b").shapes,
    );
  });

  it("is told of options that it does not know, and of lengths that are no numbers of mm", () => {
    const dot = { petal: shapes.ellipse(0, 0, 4) };
    const wrong: readonly [() => unknown, string, string][] = [
      [() => shapes.place(dot, { rotate: 0.2 } as never), "unknown-option", "shapes > place > rotate"],
      [() => shapes.place(dot, { x: "5mm" } as never), "not-mm", "shapes > place > x"],
      [() => shapes.stack([dot, dot], { gap: 1 } as never), "not-mm", "shapes > stack > gap"],
      [() => shapes.outline(dot.petal, "2mm" as never), "not-mm", "shapes > outline > by"],
      [() => shapes.inset(dot.petal, undefined as never), "not-mm", "shapes > inset > by"],
      [
        () => shapes.bouquet([dot], { reach: 10, spraed: 3 } as never),
        "unknown-option",
        "shapes > bouquet > spraed",
      ],
      [() => shapes.bouquet([dot], {} as never), "not-mm", "shapes > bouquet > reach"],
      [
        () => shapes.rosette(dot.petal, 5, { trun: 0.1 } as never),
        "unknown-option",
        "shapes > rosette > trun",
      ],
      [() => shapes.polygon(5, "4mm" as never), "not-mm", "shapes > polygon > reach"],
    ];
    for (const [call, code, where] of wrong) expect(refusal(call)).toMatchObject({ code, where });
  });

  it("refuses a bouquet of nothing", () =>
    expect(() => shapes.bouquet([], { reach: 20 })).toThrow(/flowers/));
});
