// The faces are Lobster, Roboto and EB Garamond (OFL-1.1), from @fontsource; fontkit 2.0.4 is the outside reference.
import { describe, expect, expectTypeOf, it } from "vitest";
import { intersectRings, ringsArea } from "../../../src/geometry/clip.ts";
import { flatten } from "../../../src/geometry/flatten.ts";
import { areaOf, type Box, boxOf, type Path } from "../../../src/geometry/path.ts";
import { readPathData } from "../../../src/geometry/path-data.ts";
import { pathOfRuns } from "../../../src/geometry/path-of-runs.ts";
import { useMotif } from "../../../src/motif/define.ts";
import { lettering } from "../../../src/motif/lettering/lettering.ts";
import { letteringMotif } from "../../../src/motif/lettering/piece.ts";
import type { MotifUse } from "../../../src/motif/motif.ts";
import { refusal } from "../../given.ts";
import { both, fontFile, KERN_ONLY } from "./both.ts";
import { drawn } from "./drawn.ts";

const { font: lobster, reference } = both("lobster");
const { font: garamond } = both("eb-garamond");
const { font: roboto } = both("roboto");
const area = (use: MotifUse): number => areaOf(drawn(use).outline);
const outline = (use: MotifUse): Path => drawn(use).outline;

describe("one line", () => {
  it("has the area of fontkit's outlines where no letters overlap", () => {
    for (const text of ["P", "o", "8", "i", "&", "%", "A l"]) {
      const size = 40;
      const scale = size / reference.unitsPerEm;
      const theirs = reference.layout(text, KERN_ONLY).glyphs.reduce((sum, glyph) => {
        const runs = readPathData(glyph.path.toSVG(), "fontkit").map((run) => ({
          ...run,
          points: run.points.map((v) => v * scale),
        }));
        return sum + Math.abs(areaOf(pathOfRuns(runs)));
      }, 0);
      expect(area(lettering(lobster, text, { size })) / theirs).toBeCloseTo(1, 4);
    }
  });

  it("unites letters that overlap", () => {
    const { path } = drawn(lettering(lobster, "mill", { size: 40 })).shapes[0]!;
    const rings = flatten(path, 5);
    expect(ringsArea(intersectRings(rings, rings)) / ringsArea(rings)).toBeCloseTo(1, 3);
    const letters = [..."mill"].map((letter) => area(lettering(lobster, letter, { size: 40 })));
    expect(areaOf(path)).toBeLessThan(letters.reduce((sum, one) => sum + one, 0) - 1e4);
    // m and the two ls hang together, the i's dot stands apart.
    expect(path.contours.length).toBeLessThan(4);
  });

  it("is centred, and grows with its size", () => {
    const { minX, maxX } = boxOf(outline(lettering(lobster, "Quay", { size: 20 })));
    expect(Math.abs(minX + maxX)).toBeLessThan(400); // controls reach a little past the curves
    expect(
      area(lettering(lobster, "Quay", { size: 30 })) / area(lettering(lobster, "Quay", { size: 10 })),
    ).toBeCloseTo(9, 1);
  });

  it("stands on its baseline when it is placed by the anchor", () => {
    const { minX, maxX, minY, maxY } = boxOf(
      outline(lettering(roboto, "HEH", { size: 20, origin: "anchor" })),
    );
    expect(maxY).toBe(0);
    expect(minY).toBeCloseTo(-20_000 * roboto.capHeight, -1);
    expect(Math.abs(minX + maxX)).toBeLessThan(50);
    expect(
      boxOf(outline(lettering(roboto, "HEH", { origin: "anchor", align: "left" }))).minX,
    ).toBeGreaterThan(0);
    expect(boxOf(outline(lettering(roboto, "HEH", { origin: "anchor", align: "right" }))).maxX).toBeLessThan(
      0,
    );
  });

  it("is tracked in thousandths of an em", () => {
    const width = (tracking: number): number => {
      const { minX, maxX } = boxOf(outline(lettering(roboto, "HHHHH", { size: 20, tracking })));
      return maxX - minX;
    };
    // Four gaps of a tenth of 20 mm.
    expect(width(100) - width(0)).toBeCloseTo(4 * 2000, -1);
    expect(width(-50) - width(0)).toBeCloseTo(-4 * 1000, -1);
  });

  it("sets an accent typed apart as the letter it makes, and a no-break space as a space", () => {
    const outlines = (text: string) => lettering(lobster, text).params["outlines"];
    expect(outlines("cafe\u0301")).toEqual(outlines("caf\u00e9"));
    expect(outlines("a\u00a0b")).toEqual(outlines("a b"));
  });
});

describe("several lines", () => {
  it("stand under each other by the line height", () => {
    const heights = (lineHeight: number): number => {
      const { minY, maxY } = boxOf(outline(lettering(roboto, "H\nH\r\nH", { size: 10, lineHeight })));
      return maxY - minY;
    };
    const capital = 10_000 * roboto.capHeight;
    expect(heights(1.2)).toBeCloseTo(capital + 24_000, -1);
    expect(heights(0.9)).toBeCloseTo(capital + 18_000, -1);
  });

  it.each(["left", "center", "right"] as const)("meet at the %s", (align) => {
    const use = lettering(roboto, "HHHH\nH", {
      align,
      origin: "anchor",
      role: { each: "line", roles: ["long", "short"] },
    });
    const [long, short] = drawn(use).shapes.map(({ path }) => boxOf(path)) as [Box, Box];
    expect(long.maxX - long.minX).toBeGreaterThan(3 * (short.maxX - short.minX));
    const place = ({ minX, maxX }: Box): number =>
      ({ left: minX, center: (minX + maxX) / 2, right: maxX })[align];
    expect(Math.abs(place(long) - place(short))).toBeLessThan(3);
    // Sidebearings stay: an H keeps about a tenth of an em off the edge, the middle lies on it.
    expect(Math.abs(place(long))).toBeLessThan(align === "center" ? 50 : 3000);
  });

  it("are spread to the widest when they are justified", () => {
    const use = lettering(roboto, "HARBOUR\nHOH\nH", {
      align: "justify",
      role: { each: "line", roles: ["a", "b", "c"] },
    });
    const [a, b, c] = drawn(use).shapes.map(({ path }) => boxOf(path));
    // R ends and H starts and ends at different bearings, a few hundredths of an em.
    expect(Math.abs(a!.minX - b!.minX)).toBeLessThan(100);
    expect(Math.abs(a!.maxX - b!.maxX)).toBeLessThan(2000);
    expect(c!.maxX - c!.minX).toBeLessThan(15_000);
  });
});

describe("roles", () => {
  it("the letters fill the role that they are told to, and the types know it", () => {
    const plain = lettering(lobster, "Pear");
    expect(plain.roles).toEqual({ letter: "letter" });
    expectTypeOf(plain).toEqualTypeOf<MotifUse<"letter">>();
    const inked = lettering(lobster, "Pear", { role: "ink" });
    expect(drawn(inked).shapes.map((shape) => shape.role)).toEqual(["ink"]);
    expectTypeOf(inked).toEqualTypeOf<MotifUse<"ink">>();
  });

  it("letters, words or lines take turns", () => {
    const shapes = (each: "letter" | "word" | "line", text: string): number[] =>
      drawn(lettering(roboto, text, { role: { each, roles: ["ink", "rust"] } })).shapes.map(
        ({ path }) => path.contours.length,
      );
    // One contour for every l.
    expect(shapes("letter", "ll l\nll")).toEqual([3, 2]);
    expect(shapes("word", "ll l\nll")).toEqual([4, 1]);
    expect(shapes("line", "ll l\nll\nl")).toEqual([4, 2]);
    const cycled = lettering(roboto, "lll", { role: { each: "letter", roles: ["ink", "rust", "ink"] } });
    expect(cycled.roles).toEqual({ "letter-1": "ink", "letter-2": "rust" });
    expectTypeOf(cycled).toEqualTypeOf<MotifUse<"ink" | "rust">>();
  });

  it("a role that nothing would be drawn in is refused, and so is a spoilt one", () => {
    const roles = ["ink", "rust", "gold"] as const;
    expect(refusal(() => lettering(roboto, "of it", { role: { each: "word", roles } }))).toMatchObject({
      code: "bad-lettering",
      what: "3 roles are given for 2 words",
    });
    for (const role of [
      "Ink",
      7,
      null,
      { each: "letter", roles: [] },
      { each: "dot", roles: ["ink"] },
      { each: "letter", roles: ["Ink"] },
    ])
      expect(refusal(() => lettering(roboto, "Pear", { role: role as never })).where).toMatch(
        /^lettering > role/,
      );
  });
});

describe("a recipe", () => {
  it("keeps outlines, not the font, and comes back", () => {
    const use = lettering(lobster, "Pear", { size: 24, role: "ink" });
    expect(JSON.stringify(use).length).toBeLessThan(10_000);
    expect(Object.keys(use.params)).toEqual(["text", "outlines", "size"]);
    const { use: _, params, ...others } = JSON.parse(JSON.stringify(use));
    const again = useMotif(letteringMotif, { ...params, ...others });
    expect(again).toEqual(use);
    expect(drawn(again)).toEqual(drawn(use));
  });

  it("is refused when its outlines are broken", () => {
    const broken = useMotif(letteringMotif, { text: "x", outlines: ["M0 0L10"] });
    expect(refusal(() => drawn(broken))).toMatchObject({
      code: "bad-path-data",
      where: "lettering > outlines[0]",
    });
    expect(refusal(() => useMotif(letteringMotif, { text: "x", outlines: [] })).code).toBe("list-length");
    expect(
      refusal(() =>
        useMotif(letteringMotif, { text: "x", outlines: ["M0 0L9 0L9 9Z"], roles: { leter: "ink" } }),
      ),
    ).toMatchObject({ code: "unknown-part", fix: 'did you mean "letter"? Known: letter' });
  });
});

describe("what cannot be set", () => {
  it("every character that the font lacks is named", () => {
    expect(refusal(() => lettering(lobster, "Pear 梨")).message).toBe(
      'lettering > text: "Lobster" has no glyph for "梨" (U+68A8)\n' +
        "  fix: leave it out, or load a font that has it; web fonts are often split by script [missing-glyph]",
    );
    expect(refusal(() => lettering(lobster, "梨a子\n梨𝔸")).what).toBe(
      '"Lobster" has no glyph for "梨" (U+68A8), "子" (U+5B50), "𝔸" (U+1D538)',
    );
  });

  it("text with nothing to draw, or with what steers text, is refused", () => {
    for (const text of [
      "",
      "   ",
      "\n\n",
      "a\u0007b",
      "a\tb",
      "a\u200db",
      "\ufeffPear",
      "a\u202eb",
      "a\ud800b",
      "سلام",
      "नमस्ते",
      "a\u0331b",
    ]) {
      const error = refusal(() => lettering(garamond, text));
      expect(error, JSON.stringify(text)).toMatchObject({ code: "bad-lettering", where: "lettering > text" });
    }
    expect(refusal(() => lettering(garamond, "a\u0007b")).what).toBe(
      "the text holds U+0007, which is no letter",
    );
  });

  it("too much, too large and what is no option is refused before any work", () => {
    const long = "a".repeat(10_000);
    const began = performance.now();
    expect(refusal(() => lettering(lobster, long)).code).toBe("wrong-type");
    expect(performance.now() - began).toBeLessThan(100);
    expect(refusal(() => lettering(lobster, "a".repeat(401))).code).toBe("wrong-type");
    expect(lettering(lobster, "a".repeat(400)).params["text"]).toHaveLength(400);
    expect(refusal(() => lettering(lobster, 7 as never)).where).toBe("lettering > text");
    expect(refusal(() => lettering(fontFile("lobster") as never, "Pear")).where).toBe("lettering > font");
    expect(refusal(() => lettering(lobster, "Pear", { size: 3000 })).code).toBe("length-range");
    for (const size of [Number.NaN, Number.POSITIVE_INFINITY, "20px" as never])
      expect(refusal(() => lettering(lobster, "Pear", { size }))).toMatchObject({
        where: "lettering > size",
      });
    expect(refusal(() => lettering(lobster, "Pear", { tracking: Number.NaN })).where).toBe(
      "lettering > tracking",
    );
    expect(refusal(() => lettering(lobster, "Pear", { lineHeight: 0 })).code).toBe("number-range");
    expect(refusal(() => lettering(lobster, "Pear", { align: "centre" as never })).fix).toContain('"center"');
    expect(refusal(() => lettering(lobster, "Pear", { traking: 20 } as never)).fix).toContain('"tracking"');
    expect(refusal(() => lettering(lobster, "Pear", null as never)).code).toBe("wrong-type");
  });
});
