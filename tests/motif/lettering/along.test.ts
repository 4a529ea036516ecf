import { describe, expect, it } from "vitest";
import { boxOf, eachContour, type Path } from "../../../src/geometry/path.ts";
import { pen } from "../../../src/geometry/pen.ts";
import { ellipse } from "../../../src/geometry/shapes.ts";
import { checkText } from "../../../src/motif/lettering/check-text.ts";
import { glyphsOf } from "../../../src/motif/lettering/glyphs-of.ts";
import { lettering, standsOf } from "../../../src/motif/lettering/lettering.ts";
import { type LetteringOptions, readSetting } from "../../../src/motif/lettering/options.ts";
import { setLine } from "../../../src/motif/lettering/set-line.ts";
import type { Stand } from "../../../src/motif/lettering/stand.ts";
import { refusal } from "../../given.ts";
import { both } from "./both.ts";
import { drawn } from "./drawn.ts";

const { font: garamond } = both("eb-garamond");
const { font: roboto } = both("roboto");
const TEXT = "AVAST: the tide is in at Hollin Quay";
const stands = (text: string, options: LetteringOptions<string>): Stand[] =>
  standsOf(garamond, checkText(text, "text"), readSetting(options, "lettering"));

/** Middles of advances along the straight line, in mm. */
const straight = (text: string, size: number): number[] =>
  setLine(garamond, glyphsOf(garamond, text, "text")[0]!, 0).signs.map(
    ({ x, advance }) => (x + advance / 2) * size,
  );

/** Clockwise from the top, in radians, without jumps. */
function angles(all: readonly Stand[]): number[] {
  let last = 0;
  return all.map(({ x, y }, i) => {
    let angle = Math.atan2(x, -y);
    if (i > 0) while (angle < last - Math.PI) angle += 2 * Math.PI;
    if (i > 0) while (angle > last + Math.PI) angle -= 2 * Math.PI;
    last = angle;
    return angle;
  });
}

describe("on a circle", () => {
  it.each(["outside", "inside"] as const)("every letter stands on it, and upright to it: %s", (side) => {
    for (const radius of [35, 120, 2500]) {
      const all = stands(TEXT, { size: 12, onArc: { radius, side } });
      for (const { x, y, along } of all) {
        expect(Math.abs(Math.hypot(x, y) - radius)).toBeLessThan(1e-9 * radius);
        expect(along[0] * x + along[1] * y).toBeCloseTo(0, 9);
        // Clockwise outside, the other way round inside.
        expect((x * along[1] - y * along[0]) / radius).toBeCloseTo(side === "outside" ? 1 : -1, 9);
      }
    }
  });

  it("letters are as far apart along the arc as on a straight line", () => {
    for (const [side, way] of [
      ["outside", 1],
      ["inside", -1],
    ] as const) {
      const radius = 44;
      const all = stands(TEXT, { size: 12, spacing: "baseline", onArc: { radius, side } });
      const [at, line] = [angles(all), straight(TEXT, 12)];
      for (let i = 1; i < all.length; i++)
        expect(way * (at[i]! - at[i - 1]!) * radius).toBeCloseTo(line[i]! - line[i - 1]!, 9);
    }
  });

  it("on the inside tops do not crowd: there letters are as far apart 0.3 em up", () => {
    const [radius, size] = [44, 12];
    const all = stands(TEXT, { size, onArc: { radius, side: "inside" } });
    const [at, line] = [angles(all), straight(TEXT, size)];
    for (let i = 1; i < all.length; i++)
      expect((at[i - 1]! - at[i]!) * (radius - 0.3 * size)).toBeCloseTo(line[i]! - line[i - 1]!, 9);
    const outside = (spacing: "even" | "baseline") => stands(TEXT, { size, spacing, onArc: { radius } });
    expect(outside("even")).toEqual(outside("baseline"));
  });

  it("drawn dots lie at even steps on one circle, within 2 µm", () => {
    const { outline } = drawn(
      lettering(roboto, "........", { size: 20, onArc: { radius: 50 }, origin: "anchor" }),
    );
    const dots = centres(outline).map(([x, y]) => ({ angle: Math.atan2(x, -y), radius: Math.hypot(x, y) }));
    dots.sort((a, b) => a.angle - b.angle);
    expect(dots).toHaveLength(8);
    const step = (roboto.glyph(".")!.advance / roboto.unitsPerEm) * 20_000;
    for (const [i, { radius, angle }] of dots.entries()) {
      expect(Math.abs(radius - dots[0]!.radius)).toBeLessThan(2);
      if (i > 0) expect(Math.abs((angle - dots[i - 1]!.angle) * 50_000 - step)).toBeLessThan(2);
    }
    // The text is centred on the top.
    expect(Math.abs(dots[0]!.angle + dots[7]!.angle) * 50_000).toBeLessThan(step / 4);
  });

  it("start and align say where the text begins, is centred or ends", () => {
    const first = (options: LetteringOptions<string>) => angles(stands("iii", { size: 10, ...options }));
    const at = 0.25 * 2 * Math.PI;
    const [left, ,] = first({ align: "left", onArc: { radius: 50, start: 0.25 } });
    const [, center] = first({ onArc: { radius: 50, start: 0.25 } });
    const [, , right] = first({ align: "right", onArc: { radius: 50, start: 0.25 } });
    const half = straight("i", 10)[0]! / 50;
    expect(left).toBeCloseTo(at + half, 9);
    expect(center).toBeCloseTo(at, 9);
    expect(right).toBeCloseTo(at - half, 9);
    expect(Math.abs(angles(stands("i", { onArc: { radius: 50, side: "inside" } }))[0]!)).toBeCloseTo(
      Math.PI,
      9,
    );
  });

  it("justified text goes all the way round, with its last step as long as the others", () => {
    const all = stands("ooooooo", { size: 9, align: "justify", onArc: { radius: 30 } });
    const at = angles(all);
    for (let i = 1; i < 7; i++) expect(at[i]! - at[i - 1]!).toBeCloseTo((2 * Math.PI) / 7, 9);
  });
});

/** The middle of every contour's box. */
function centres(path: Path): [number, number][] {
  const found: [number, number][] = [];
  eachContour(path, (from, to) => {
    const { minX, minY, maxX, maxY } = boxOf({ points: path.points.slice(from, to), contours: [] });
    found.push([(minX + maxX) / 2, (minY + maxY) / 2]);
  });
  return found;
}

describe("on a path", () => {
  const wave = "M0 0C30 -34 50 34 80 0S130 -34 160 0S210 34 240 0";
  /** The same wave as many points. */
  const points = ((): [number, number][] => {
    const legs = [
      [0, 0, 30, -34, 50, 34, 80, 0],
      [80, 0, 110, -34, 130, -34, 160, 0],
      [160, 0, 190, 34, 210, 34, 240, 0],
    ] as const;
    return legs.flatMap(([x0, y0, x1, y1, x2, y2, x3, y3]) =>
      Array.from({ length: 20_001 }, (_, k): [number, number] => {
        const [t, s] = [k / 20_000, 1 - k / 20_000];
        const on = (a: number, b: number, c: number, d: number): number =>
          s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
        return [on(x0, x1, x2, x3), on(y0, y1, y2, y3)];
      }),
    );
  })();

  it("every letter stands on it within 2 µm, as far along it as on a straight line", () => {
    const lengths = [0];
    for (let i = 1; i < points.length; i++)
      lengths.push(
        lengths[i - 1]! + Math.hypot(points[i]![0] - points[i - 1]![0], points[i]![1] - points[i - 1]![1]),
      );
    const all = stands(TEXT, { size: 13, align: "left", spacing: "baseline", onPath: wave });
    const line = straight(TEXT, 13);
    all.forEach(({ x, y }, i) => {
      const near = lengths.findIndex((length) => length >= line[i]!);
      // Between two of the many points, which are 5 µm apart.
      const share = (line[i]! - lengths[near - 1]!) / (lengths[near]! - lengths[near - 1]!);
      const [a, b] = [points[near - 1]!, points[near]!];
      expect(Math.hypot(x - a[0] - share * (b[0] - a[0]), y - a[1] - share * (b[1] - a[1]))).toBeLessThan(
        0.002,
      );
    });
  });

  it("goes around a circle drawn with the pen as it does on the circle itself", () => {
    const around = stands(TEXT, { size: 12, onPath: ellipse(0, 0, 60) });
    const true_ = stands(TEXT, { size: 12, onArc: { radius: 60 } });
    // Four cubics are off a circle by 2.7e-4 of its radius, 16 µm here.
    around.forEach(({ x, y, along }, i) => {
      expect(Math.hypot(x - true_[i]!.x, y - true_[i]!.y)).toBeLessThan(0.02);
      expect(along[0] * true_[i]!.along[0] + along[1] * true_[i]!.along[1]).toBeCloseTo(1, 5);
    });
    const inner = stands(TEXT, { size: 12, onPath: "M0 60A60 60 0 0 0 0 -60A60 60 0 0 0 0 60Z" });
    const inside = stands(TEXT, { size: 12, onArc: { radius: 60, side: "inside" } });
    inner.forEach(({ x, y }, i) => {
      expect(Math.hypot(x - inside[i]!.x, y - inside[i]!.y)).toBeLessThan(0.1);
    });
  });

  it("a straight path sets the line itself", () => {
    const all = stands(TEXT, { size: 8, align: "left", onPath: "M10 5H300" });
    const line = straight(TEXT, 8);
    all.forEach(({ x, y, along }, i) => {
      expect(x - 10).toBeCloseTo(line[i]!, 6);
      expect(y).toBeCloseTo(5, 9);
      expect(along[0]).toBeCloseTo(1, 9);
    });
  });

  it("letters meet an open path's start, middle or end, and fill it when justified", () => {
    const ends = (align: "left" | "center" | "right" | "justify") => {
      const all = stands("ooo", { size: 10, align, onPath: "M0 0H100" });
      return [all[0]!.x, all[2]!.x];
    };
    const half = straight("o", 10)[0]!;
    expect(ends("left")[0]).toBeCloseTo(half, 6);
    expect(ends("right")[1]).toBeCloseTo(100 - half, 6);
    expect(ends("center")[0]! + ends("center")[1]!).toBeCloseTo(100, 6);
    expect(ends("justify")).toEqual([expect.closeTo(half, 6), expect.closeTo(100 - half, 6)]);
  });

  it("gives room where the path bends to the tops, and turns corners step by step", () => {
    const valley = "M0 0L40 40L80 0";
    const gaps = (spacing: "even" | "baseline") => {
      const all = stands("nnnnnnnnnn", { size: 10, spacing, onPath: valley });
      return Math.hypot(all[5]!.x - all[4]!.x, all[5]!.y - all[4]!.y);
    };
    expect(gaps("even")).toBeGreaterThan(1.2 * gaps("baseline"));
    for (const { along } of stands("nnnnnnnnnn", { size: 10, onPath: valley }))
      expect(Math.hypot(...along)).toBeCloseTo(1, 9);
  });

  it("survives hairpins, cusps and loops", () => {
    for (const path of [
      "M0 0L60 0L0 0L60 0",
      "M0 0C100 60 0 60 100 0",
      "M0 0C90 90 -50 90 40 0L120 0",
      "M0 0L0 0L80 0",
    ])
      for (const { x, y, along } of stands("tide", { size: 9, onPath: path })) {
        expect(Number.isFinite(x + y)).toBe(true);
        expect(Math.hypot(...along)).toBeCloseTo(1, 9);
      }
  });
});

describe("too long a text", () => {
  it.each([
    ["outside a circle", { onArc: { radius: 20 } }],
    ["inside a circle", { onArc: { radius: 20, side: "inside" } }],
    ["an open path", { onPath: "M0 0C10 -20 30 20 60 0" }],
    ["a closed path", { onPath: ellipse(0, 0, 20, 12) }],
  ] as const)("is refused with the largest size that fits: %s", (_, options) => {
    const error = refusal(() => lettering(garamond, TEXT, { size: 20, ...options }));
    expect(error).toMatchObject({ code: "text-too-long" });
    const size = Number(/set it at ([\d.]+) mm or less/.exec(error.fix)![1]);
    expect(size).toBeGreaterThan(1);
    expect(size).toBeLessThan(20);
    expect(lettering(garamond, TEXT, { size, ...options }).params["size"]).toBe(size);
    expect(refusal(() => lettering(garamond, TEXT, { size: size + 0.002, ...options })).code).toBe(
      "text-too-long",
    );
  });

  it("says so when no size would do", () => {
    expect(refusal(() => lettering(garamond, TEXT, { onPath: "M0 0H2" })).fix).toBe(
      "give a longer path or a shorter text",
    );
  });
});

describe("what is no path", () => {
  it("is refused in words", () => {
    const on = (onPath: unknown) => refusal(() => lettering(garamond, "tide", { onPath: onPath as string }));
    expect(on("M0 0H100M0 20H100")).toMatchObject({ code: "bad-lettering", what: "it has 2 pieces" });
    expect(on("")).toMatchObject({ code: "bad-lettering", where: "lettering > onPath" });
    expect(on("M10 10")).toMatchObject({ code: "bad-lettering" });
    expect(on("M10 10L10 10")).toMatchObject({ what: "it has no length" });
    expect(on("L10 10").code).toBe("bad-path-data");
    expect(on("M0 0L10").code).toBe("bad-path-data");
    expect(on("M0 0LNaN 4").code).toBe("bad-path-data");
    expect(on("M0 0L1e400 4").where).toBe("lettering > onPath");
    expect(on(`M0 0${"L5 5".repeat(20_000)}`).what).toContain("80004 characters");
    expect(on(7).code).toBe("bad-lettering");
    expect(on(null).code).toBe("bad-lettering");
    expect(on(pen().path()).what).toBe("there is no line in it");
  });

  it("neither is a circle without radius, nor both, nor two lines on one", () => {
    const error = (options: LetteringOptions<string>, text = "tide") =>
      refusal(() => lettering(garamond, text, options));
    expect(error({ onArc: {} as never })).toMatchObject({
      code: "missing-option",
      where: "lettering > onArc > radius",
    });
    expect(error({ onArc: { radius: Number.NaN } }).where).toBe("lettering > onArc > radius");
    expect(error({ onArc: { radius: 20, side: "above" as never } }).where).toBe("lettering > onArc > side");
    expect(error({ onArc: { radius: 20 }, onPath: "M0 0H9" }).what).toBe("both onArc and onPath are given");
    expect(error({ onArc: { radius: 200 } }, "two\nlines").what).toContain("2 lines");
  });
});
