// Outlines, advances and kerning against fontkit 2.0.4, on three fonts with an open licence (OFL-1.1).
import { describe, expect, it } from "vitest";
import { glyphsOf } from "../../../src/motif/lettering/glyphs-of.ts";
import { setLine } from "../../../src/motif/lettering/set-line.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { both, FACES, KERN_ONLY, ourCurves, theirCurves } from "./both.ts";

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";
const SIGNS = `${LETTERS} .,:;!?'"’“”()-–—&%@*+/äöüßéèêñçåøÆŒ`;

/** 200 words of two to twelve letters, some of capitals, some with signs: real pairs come up often enough. */
const WORDS = ((): string[] => {
  const random = createRandom("200-words");
  const known = [
    "AVAST",
    "Tomorrow",
    "WAVES",
    "Yonder,",
    "To Valparaíso",
    "LTYPA",
    "fjord's",
    "“Quay”",
    "P.A.",
    "Avenue",
  ];
  const pick = (from: string): string => from[random.below(from.length)]!;
  return [
    ...known,
    ...Array.from({ length: 190 }, (_, n) =>
      Array.from({ length: 2 + random.below(11) }, () => pick(n % 3 ? LETTERS : SIGNS)).join(""),
    ),
  ].map((word) => word.trim() || "A");
})();

describe.each(FACES)("%s", (face) => {
  const { font, reference } = both(face);

  it("has the em and the capitals that fontkit finds", () => {
    expect(font.unitsPerEm).toBe(reference.unitsPerEm);
    expect(font.capHeight).toBe(reference.capHeight / reference.unitsPerEm);
  });

  it("has the same curves in every letter, to the last unit, and the same advances", () => {
    let curves = 0;
    for (const sign of SIGNS) {
      const [theirs] = reference.layout(sign, KERN_ONLY).glyphs;
      const ours = font.glyph(sign)!;
      expect(ours.index, sign).toBe(theirs!.id);
      expect(ours.advance, sign).toBe(theirs!.advanceWidth);
      expect(ourCurves(ours.commands), sign).toEqual(theirCurves(theirs!.path.commands));
      curves += ours.commands.length;
    }
    expect(curves).toBeGreaterThan(1000);
  });

  it("sets 200 words to the same lengths, kerning included", () => {
    let kerned = 0;
    for (const word of WORDS) {
      const { positions, glyphs } = reference.layout(word, KERN_ONLY);
      const theirs = positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
      const bare = glyphs.reduce((sum, { advanceWidth }) => sum + advanceWidth, 0);
      const line = setLine(font, glyphsOf(font, word, "word")[0]!, 0);
      expect(line.width * font.unitsPerEm, word).toBeCloseTo(theirs, 6);
      if (theirs !== bare) kerned++;
    }
    expect(WORDS).toHaveLength(200);
    expect(kerned).toBeGreaterThan(face === "lobster" ? 10 : 50);
  });

  it("kerns every pair of letters as fontkit does", () => {
    let kerned = 0;
    for (const left of LETTERS)
      for (const right of LETTERS) {
        const { positions, glyphs } = reference.layout(left + right, KERN_ONLY);
        const theirs = positions[0]!.xAdvance - glyphs[0]!.advanceWidth;
        const ours = font.kerning(font.glyph(left)!, font.glyph(right)!);
        if (ours !== theirs) expect(`${left}${right} ${ours}`).toBe(`${left}${right} ${theirs}`);
        if (theirs !== 0) kerned++;
      }
    expect(kerned).toBeGreaterThan(20);
  });
});

it("Cyrillic is kerned by its own script's pairs", () => {
  const { font, reference } = both("roboto", "roboto-cyrillic-400-normal.woff");
  let kerned = 0;
  for (const left of "АГРТУФабгдруф")
    for (const right of "АЛОУажлосу,.".replace(/[,.]/g, "")) {
      const { positions, glyphs } = reference.layout(left + right, KERN_ONLY);
      const theirs = positions[0]!.xAdvance - glyphs[0]!.advanceWidth;
      expect(font.kerning(font.glyph(left)!, font.glyph(right)!), left + right).toBe(theirs);
      if (theirs !== 0) kerned++;
    }
  expect(kerned).toBeGreaterThan(5);
});
