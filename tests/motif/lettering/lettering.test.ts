// The face is Lobster (OFL-1.1), from @fontsource/lobster; fontkit 2.0.4 is the outside reference.
import { readFileSync } from "node:fs";
import * as fontkit from "fontkit";
import { describe, expect, expectTypeOf, it } from "vitest";
import { intersectRings, ringsArea } from "../../../src/geometry/clip.ts";
import { flatten } from "../../../src/geometry/flatten.ts";
import { areaOf, boxOf } from "../../../src/geometry/path.ts";
import { readPathData } from "../../../src/motif/artwork/path-data.ts";
import { toPath } from "../../../src/motif/artwork/to-path.ts";
import { useMotif } from "../../../src/motif/define.ts";
import { drawMotif } from "../../../src/motif/draw.ts";
import { loadFont } from "../../../src/motif/lettering/font.ts";
import { lettering } from "../../../src/motif/lettering/lettering.ts";
import { letteringMotif } from "../../../src/motif/lettering/piece.ts";
import type { MotifUse } from "../../../src/motif/motif.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { refusal } from "../../given.ts";

const read = (name: string): Uint8Array =>
  new Uint8Array(
    readFileSync(new URL(`../../../node_modules/@fontsource/lobster/files/${name}`, import.meta.url)),
  );
const bytes = read("lobster-latin-400-normal.woff");
const lobster = loadFont(bytes);
const drawn = (use: MotifUse) => drawMotif(use, createRandom("letters"))[0]!;

/** The reference's own face, as far as these tests use it. */
interface Face {
  readonly unitsPerEm: number;
  layout(
    text: string,
    features: Record<string, boolean>,
  ): {
    readonly glyphs: readonly { readonly path: { toSVG(): string } }[];
    readonly positions: readonly { readonly xAdvance: number }[];
  };
}
const face = fontkit.create(Buffer.from(bytes)) as unknown as Face;
const plain = {
  kern: true,
  liga: false,
  clig: false,
  calt: false,
  dlig: false,
  rlig: false,
  rclt: false,
  ccmp: false,
};

describe("a font", () => {
  it("tells its name and its em", () => {
    expect(lobster).toMatchObject({ family: "Lobster", unitsPerEm: face.unitsPerEm });
  });

  it("moves on and kerns as fontkit does with the same features", () => {
    for (const text of ["BUTTER", "To Valparaiso", "Harbour Pears", "WAVES & Tides, 1887"]) {
      const { positions } = face.layout(text, plain);
      const glyphs = [...text].map((character) => lobster.glyph(character)!);
      const ours = glyphs.map((glyph, i) => {
        const next = glyphs[i + 1];
        return glyph.advance + (next ? lobster.kerning(glyph, next) : 0);
      });
      expect(ours).toEqual(positions.map((position) => position.xAdvance));
    }
    const T = lobster.glyph("T")!;
    expect(lobster.kerning(T, T)).toBe(40); // the one pair that this part of the face kerns
    expect(lobster.kerning(T, lobster.glyph("o")!)).toBe(0);
  });

  it("is refused when it cannot be read, with what would do", () => {
    const woff2 = read("lobster-latin-400-normal.woff2");
    expect(refusal(() => loadFont(woff2))).toMatchObject({
      code: "font-format",
      what: "this is a WOFF2 font",
    });
    expect(refusal(() => loadFont(new Uint8Array(0))).code).toBe("font-format");
    expect(refusal(() => loadFont(new TextEncoder().encode("ttcf....."))).code).toBe("font-format");
    expect(refusal(() => loadFont(bytes.slice(0, 2000))).code).toBe("bad-font");
    expect(refusal(() => loadFont("Lobster" as unknown as Uint8Array)).code).toBe("wrong-type");
  });
});

describe("lettering", () => {
  it("has the area of fontkit's outlines where no letters overlap", () => {
    for (const text of ["P", "o", "8", "i", "&", "%", "A l"]) {
      const size = 40;
      const scale = size / face.unitsPerEm;
      const reference = face.layout(text, plain).glyphs.reduce((sum, glyph) => {
        const runs = readPathData(glyph.path.toSVG(), "fontkit").map((run) => ({
          ...run,
          points: run.points.map((v) => v * scale),
        }));
        return sum + Math.abs(areaOf(toPath(runs)));
      }, 0);
      expect(areaOf(drawn(lettering(lobster, text, { size })).outline) / reference).toBeCloseTo(1, 3);
    }
  });

  it("unites letters that overlap", () => {
    const { path } = drawn(lettering(lobster, "mill", { size: 40 })).shapes[0]!;
    const rings = flatten(path, 5);
    expect(ringsArea(intersectRings(rings, rings)) / ringsArea(rings)).toBeCloseTo(1, 3);
    const letters = [..."mill"].map((letter) =>
      areaOf(drawn(lettering(lobster, letter, { size: 40 })).outline),
    );
    expect(areaOf(path)).toBeLessThan(letters.reduce((sum, area) => sum + area, 0) - 1e4);
  });

  it("is centred, and grows with its size", () => {
    const box = boxOf(drawn(lettering(lobster, "Quay", { size: 20 })).outline);
    expect(Math.abs(box.minX + box.maxX)).toBeLessThan(400); // controls reach a little past the curves
    const [small, large] = [10, 30].map((size) =>
      areaOf(drawn(lettering(lobster, "Quay", { size })).outline),
    );
    expect(large! / small!).toBeCloseTo(9, 1);
  });

  it("keeps outlines, not the font, and comes back from a recipe", () => {
    const use = lettering(lobster, "Pear", { size: 24, role: "ink" });
    const text = JSON.stringify(use);
    expect(text.length).toBeLessThan(10_000);
    expect(Object.keys(use.params)).toEqual(["text", "outline", "size"]);
    const { use: _, params, ...others } = JSON.parse(text);
    const again = useMotif(letteringMotif.piece, { ...params, ...others });
    expect(again).toEqual(use);
    expect(drawn(again)).toEqual(drawn(use));
  });

  it("fills the role that it is told to, and the types know it", () => {
    const plainUse = lettering(lobster, "Pear");
    expect(plainUse.roles).toEqual({ letter: "letter" });
    expectTypeOf(plainUse).toEqualTypeOf<MotifUse<"letter">>();
    const inked = lettering(lobster, "Pear", { role: "ink" });
    expect(drawn(inked).shapes.map((shape) => shape.role)).toEqual(["ink"]);
    expectTypeOf(inked).toEqualTypeOf<MotifUse<"ink">>();
  });

  it("sets an accent typed apart as the letter it makes", () => {
    expect(lettering(lobster, "cafe\u0301").params["outline"]).toBe(
      lettering(lobster, "caf\u00e9").params["outline"],
    );
  });

  it("names the character that the font lacks", () => {
    expect(refusal(() => lettering(lobster, "Pear 梨")).message).toBe(
      'lettering > text: "Lobster" has no glyph for "梨" (U+68A8)\n' +
        "  fix: leave the character out, or load a font that has it; web fonts are often split by script [missing-glyph]",
    );
  });

  it("refuses what is not one drawn line", () => {
    for (const text of ["", "   ", "two\nlines", "سلام"]) {
      const error = refusal(() => lettering(lobster, text));
      expect(error).toMatchObject({ code: "bad-lettering", where: "lettering > text" });
    }
    expect(refusal(() => lettering(lobster, "a".repeat(201))).code).toBe("wrong-type");
    expect(refusal(() => lettering(bytes as never, "Pear")).where).toBe("lettering > font");
    expect(refusal(() => lettering(lobster, "Pear", { size: 3000 })).code).toBe("length-range");
    expect(refusal(() => lettering(lobster, "Pear", { role: "Ink" })).where).toBe(
      "lettering > roles > letter",
    );
  });

  it("refuses a recipe whose outline is broken", () => {
    const use = useMotif(letteringMotif.piece, { text: "x", outline: "M0 0L10" });
    expect(refusal(() => drawn(use))).toMatchObject({ code: "bad-path-data", where: "lettering > outline" });
  });
});
