import { describe, expect, expectTypeOf, it } from "vitest";
import { intersectRings, ringsArea, subtractRings } from "../../../src/geometry/clip.ts";
import { flatten, type Ring } from "../../../src/geometry/flatten.ts";
import { growRings } from "../../../src/geometry/grow.ts";
import { areaOf, boxOf, type Path } from "../../../src/geometry/path.ts";
import { ellipse } from "../../../src/geometry/shapes.ts";
import { monogram } from "../../../src/motif/lettering/monogram/monogram.ts";
import { weave } from "../../../src/motif/lettering/monogram/weave.ts";
import type { MotifUse } from "../../../src/motif/motif.ts";
import { rectangle, refusal } from "../../given.ts";
import { both } from "./both.ts";
import { drawn } from "./drawn.ts";

const { font } = both("eb-garamond", "eb-garamond-latin-700-normal.woff");
const { font: roboto } = both("roboto");
const rings = (path: Path): Ring[] => flatten(path, 2);
const shapes = (use: MotifUse): Record<string, Path> =>
  Object.fromEntries(drawn(use).shapes.map(({ role, path }) => [role, path]));
const width = (path: Path): number => {
  const { minX, maxX } = boxOf(path);
  return maxX - minX;
};
const each = { each: "letter", roles: ["one", "two", "three"] } as const;

describe("weaving", () => {
  const [bar, post, other] = [rectangle(-20, -2, 40, 4), rectangle(-2, -20, 4, 40), rectangle(8, -20, 4, 40)];

  it("cuts what goes under back by the gap, on both sides", () => {
    const [under, over] = weave([bar, post], 500);
    expect(over).toEqual(post);
    // A bar of 40 by 4 mm less 4 mm and two gaps of half a millimetre.
    expect(areaOf(under!) / 1e6).toBeCloseTo(4 * (40 - 5), 2);
    expect(under!.contours).toHaveLength(2);
  });

  it("goes over and under in turn", () => {
    const ring = (x: number): Path => {
      const [outer, inner] = [ellipse(x, 0, 12), ellipse(x, 0, 9)];
      const hole = flatten(inner, 1)[0]!;
      return pathOf(subtractRings(flatten(outer, 1), [hole]));
    };
    const [left, right] = weave([ring(-7), ring(7)], 400);
    // Two rings cross twice; each is cut once, so both stay in one piece and open.
    for (const link of [left!, right!]) expect(link.contours).toHaveLength(1);
    expect(areaOf(left!) / areaOf(right!)).toBeCloseTo(1, 2);
  });

  it("of three, the middle one goes over both", () => {
    const [a, b, c] = weave([post, bar, other], 300);
    expect(b).toEqual(bar);
    expect(a!.contours).toHaveLength(2);
    expect(c!.contours).toHaveLength(2);
  });

  it("keeps the gap where letters pass without crossing: the later one gives way", () => {
    const [first, later] = weave([bar, rectangle(-20, 2.2, 40, 4)], 500);
    expect(first).toEqual(bar);
    expect(Math.abs(boxOf(later!).minY - 2500)).toBeLessThanOrEqual(12);
    expect(boxOf(later!).maxY).toBe(6200);
  });

  it("leaves what stands apart as it is", () => {
    const far = rectangle(100, 0, 5, 5);
    expect(weave([bar, far], 500)).toEqual([bar, far]);
  });
});

const pathOf = (list: readonly Ring[]): Path => ({
  points: Int32Array.from(
    list.flatMap((ring) =>
      Array.from({ length: ring.length / 2 }, (_, i) => {
        const k = (i + 1) % (ring.length / 2);
        return [
          ring[2 * i]!,
          ring[2 * i + 1]!,
          ring[2 * i]!,
          ring[2 * i + 1]!,
          ring[2 * k]!,
          ring[2 * k + 1]!,
        ];
      }).flat(),
    ),
  ),
  contours: list.map((ring) => ring.length / 2),
});

describe("a monogram", () => {
  it.each(["HQ", "AM", "OO", "HB", "WX"])(
    "%s: its letters cross with the gap between them, and stay letters",
    (text) => {
      const gap = 0.6;
      const use = monogram(font, text, { size: 50, gap, role: { each: "letter", roles: ["one", "two"] } });
      const { one, two } = shapes(use);
      const near = intersectRings(growRings(rings(one!), gap * 1000 - 30, 2), rings(two!));
      // Nowhere nearer than the gap, but for 30 µm.
      expect(ringsArea(near) / 1e6).toBeLessThan(0.001);
      expect(ringsArea(intersectRings(rings(one!), rings(two!))) / 1e6).toBeLessThan(0.001);
      const apart = shapes(
        monogram(font, text, {
          size: 50,
          gap,
          overlap: 0,
          drop: 0,
          role: { each: "letter", roles: ["one", "two"] },
        }),
      );
      expect(areaOf(one!) + areaOf(two!)).toBeGreaterThan(
        0.5 * (areaOf(apart["one"]!) + areaOf(apart["two"]!)),
      );
    },
  );

  it.each(["none", "ring", "double-ring", "lozenge"] as const)(
    "is as large as it is told to be: %s",
    (frame) => {
      for (const [text, arrangement] of [
        ["HQ", "interlaced"],
        ["HQB", "flanked"],
      ] as const) {
        const { minX, maxX, minY, maxY } = boxOf(
          drawn(monogram(font, text, { size: 40, frame, arrangement })).outline,
        );
        // Controls of a letter's curves reach a little past them.
        expect(Math.abs(Math.max(maxX - minX, maxY - minY) - 40_000)).toBeLessThan(
          frame === "none" ? 400 : 3,
        );
        if (frame !== "none") expect([minX + maxX, minY + maxY].every((v) => Math.abs(v) <= 2)).toBe(true);
      }
    },
  );

  it("a frame keeps clear of the letters", () => {
    for (const frame of ["ring", "double-ring", "lozenge"] as const) {
      const { one, two, gold } = shapes(
        monogram(font, "HQ", {
          size: 60,
          frame,
          frameRole: "gold",
          role: { each: "letter", roles: ["one", "two"] },
        }),
      );
      for (const letter of [one!, two!])
        expect(intersectRings(growRings(rings(letter), 1000, 5), rings(gold!))).toEqual([]);
    }
  });

  it("flanked: a tall letter stands between two small ones", () => {
    const { one, two, three } = shapes(
      monogram(roboto, "HHH", { arrangement: "flanked", size: 60, role: each }),
    );
    expect(width(one!) / width(two!)).toBeCloseTo(0.6, 2);
    expect(width(three!)).toBeCloseTo(width(one!), -1);
    expect(boxOf(one!).maxX).toBeLessThan(boxOf(two!).minX);
    expect(boxOf(two!).maxX).toBeLessThan(boxOf(three!).minX);
    expect(boxOf(one!).minY + boxOf(one!).maxY).toBeCloseTo(boxOf(two!).minY + boxOf(two!).maxY, -1);
  });

  it("a letter above the tail of a Q stands as near as to an O", () => {
    const gap = (text: string): number => {
      const { two, three } = shapes(monogram(font, text, { arrangement: "flanked", size: 60, role: each }));
      const heights = Math.max(1, boxOf(three!).maxY - boxOf(three!).minY);
      return (boxOf(three!).minX - boxOf(two!).maxX) / heights;
    };
    expect(gap("HQB")).toBeLessThan(gap("HOB"));
  });

  it("is drawn in the roles that it is told to, and the types know them", () => {
    expect(monogram(font, "HQ").roles).toEqual({ first: "letter", second: "letter" });
    const framed = monogram(font, "HQ", { frame: "ring", role: "ink", frameRole: "gold" });
    expect(framed.roles).toEqual({ frame: "gold", first: "ink", second: "ink" });
    expectTypeOf(framed).toEqualTypeOf<MotifUse<"ink" | "gold">>();
    expect(monogram(font, "HQ", { frame: "ring" }).roles).toEqual({
      frame: "letter",
      first: "letter",
      second: "letter",
    });
  });

  it("keeps its options in the recipe, and not the font", () => {
    const use = monogram(font, "HQ", { size: 40, frame: "ring" });
    expect(Object.keys(use.params)).toEqual([
      "text",
      "letters",
      "size",
      "arrangement",
      "overlap",
      "drop",
      "gap",
      "frame",
      "line",
    ]);
    expect(JSON.stringify(use).length).toBeLessThan(8000);
  });

  it("what is no monogram is refused before it is drawn", () => {
    const error = (text: string, options = {}) => refusal(() => monogram(font, text, options));
    for (const text of ["H", "HQBM", "H Q", "H\nQ", "", "H\u0007Q"])
      expect(error(text).code).toBe("bad-lettering");
    expect(error("H梨").code).toBe("missing-glyph");
    expect(error("HQ", { arrangement: "flanked" })).toMatchObject({
      code: "bad-lettering",
      where: "monogram > arrangement",
    });
    expect(error("HQ", { size: Number.NaN }).where).toBe("monogram > size");
    expect(error("HQ", { size: 30, line: 4 })).toMatchObject({
      code: "length-range",
      where: "monogram > line",
    });
    expect(error("HQ", { size: 30, gap: 4 }).where).toBe("monogram > gap");
    expect(error("HQ", { frame: "square" }).where).toBe("monogram > frame");
    expect(error("HQ", { overlap: 2 }).code).toBe("number-range");
    expect(error("HQ", { role: { each: "word", roles: ["a"] } }).where).toBe("monogram > role");
    expect(error("HQ", { frame: "ring", frameRole: "Gold" }).code).toBe("wrong-type");
    expect(error("HQ", { frameRole: "gold" }).what).toBe("there is no frame to fill it");
    expect(refusal(() => monogram(null as never, "HQ")).where).toBe("monogram > font");
  });
});
