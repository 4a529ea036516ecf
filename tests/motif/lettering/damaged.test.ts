import { expect, test } from "vitest";
import { SprigwrightError } from "../../../src/index.ts";
import { lettering, loadFont } from "../../../src/lettering.ts";
import { sfntTable } from "../../../src/motif/lettering/sfnt-table.ts";
import { sfntOfWoff } from "../../../src/motif/lettering/woff.ts";
import { createRandom } from "../../../src/seed/random.ts";
import { refusal } from "../../given.ts";
import { fontFile } from "./both.ts";

// Lobster, OFL-1.1, from @fontsource/lobster.
const woff = fontFile("lobster");
const plain = sfntOfWoff(woff, 2e7);

test.each([
  ["packed", woff],
  ["plain", plain],
])("a %s font with a few damaged bytes is read or refused in words, and always in time", (_, sound) => {
  let refused = 0;
  for (let k = 0; k < 120; k++) {
    const random = createRandom(`damage-${k}`);
    const bytes = new Uint8Array(sound);
    for (let i = 0; i < 1 + random.below(4); i++)
      bytes[random.below(k % 2 ? 2000 : bytes.length)] = random.below(256);
    const began = Date.now();
    try {
      lettering(loadFont(bytes), "Harbour", { size: 20 });
    } catch (error) {
      expect(error).toBeInstanceOf(SprigwrightError);
      refused++;
    }
    expect(Date.now() - began).toBeLessThan(3000);
  }
  expect(refused).toBeGreaterThan(5);
});

test("a WOFF file whose tables do not fit is refused with the table", () => {
  const bytes = new Uint8Array(woff);
  new DataView(bytes.buffer).setUint32(48, bytes.length);
  expect(() => loadFont(bytes)).toThrow(/table 1 of \d+ lies outside the file.*\[bad-font\]/s);
});

/** The font with glyphs whose outlines are replaced by as many references to another glyph as their bytes hold. */
function withComposites(chain: readonly (readonly [glyph: number, of: number])[]): Uint8Array {
  const bytes = plain.slice();
  const [head, loca, glyf] = ["head", "loca", "glyf"].map((tag) => sfntTable(bytes, tag)!);
  const offset = (n: number): number =>
    head!.getInt16(50) ? loca!.getUint32(4 * n) : 2 * loca!.getUint16(2 * n);
  for (const [glyph, of] of chain) {
    const count = Math.min(40, Math.floor((offset(glyph + 1) - offset(glyph) - 10) / 6));
    glyf!.setInt16(offset(glyph), -1);
    for (let k = 0; k < count; k++) {
      const at = offset(glyph) + 10 + 6 * k;
      glyf!.setUint16(at, k < count - 1 ? 0x22 : 0x02);
      glyf!.setUint16(at + 2, of);
      glyf!.setUint16(at + 4, 0);
    }
  }
  return bytes;
}

test("a glyph made of itself, or of glyphs without end, is refused at once", () => {
  const index = (letter: string): number => loadFont(plain).glyph(letter)!.index;
  const letters = [..."abcdefgh"].map(index);
  const began = Date.now();
  const bomb = withComposites(letters.slice(1).map((glyph, k) => [glyph, letters[k]!]));
  expect(refusal(() => lettering(loadFont(bomb), "h"))).toMatchObject({
    code: "bad-font",
    what: expect.stringContaining("more than 1000 pieces"),
  });
  const circle = withComposites([
    [letters[1]!, letters[2]!],
    [letters[2]!, letters[1]!],
  ]);
  expect(refusal(() => lettering(loadFont(circle), "b")).what).toContain("is made of itself");
  expect(Date.now() - began).toBeLessThan(1500);
  // One step of it is a letter like any other.
  const sound = withComposites([[letters[1]!, letters[0]!]]);
  expect(loadFont(sound).glyph("b")!.commands.length).toBeGreaterThan(50);
});
