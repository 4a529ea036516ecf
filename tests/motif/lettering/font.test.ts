// The faces are Lobster, Roboto and EB Garamond (OFL-1.1), from @fontsource; woff2-encoder 2.0.0 unpacks WOFF2.
import * as fontkit from "fontkit";
import { describe, expect, it } from "vitest";
import decompress from "woff2-encoder/decompress";
import { ringsArea, uniteRings } from "../../../src/geometry/clip.ts";
import { flatten } from "../../../src/geometry/flatten.ts";
import { loadFont } from "../../../src/motif/lettering/font.ts";
import { lettering } from "../../../src/motif/lettering/lettering.ts";
import { sfntOfWoff } from "../../../src/motif/lettering/woff.ts";
import { refusal } from "../../given.ts";
import { FACES, type Face, fontFile, KERN_ONLY, ourCurves, theirCurves } from "./both.ts";
import { drawn } from "./drawn.ts";

const woff = fontFile("lobster");

describe("a font", () => {
  it("tells its name, its em and the height of its capitals", () => {
    const font = loadFont(woff);
    expect(font.family).toBe("Lobster");
    const capital = font.glyph("H")!.commands.flatMap((step) => (step.type === "Z" ? [] : [step.y]));
    expect(Math.max(...capital) / font.unitsPerEm).toBeCloseTo(font.capHeight, 1);
  });

  it("is read as .woff, and as the .ttf inside it, to the same letters", () => {
    const plain = loadFont(sfntOfWoff(woff, 1e7));
    expect(lettering(plain, "Harbour").params).toEqual(lettering(loadFont(woff), "Harbour").params);
  });

  // These files are other builds than the .woff: strokes of a letter overlap in some.
  it.each(FACES)("is read as WOFF2 once a decoder has unpacked it: %s", async (face) => {
    const packed = fontFile(face, `${face}-latin-400-normal.woff2`);
    const font = loadFont(await decompress(packed));
    const reference = fontkit.create(Buffer.from(packed)) as unknown as Face;
    for (const sign of "AVAST & To Wharf, 1887") {
      const { glyphs } = reference.layout(sign, KERN_ONLY);
      const glyph = font.glyph(sign)!;
      expect(glyph.advance).toBe(glyphs[0]!.advanceWidth);
      expect(ourCurves(glyph.commands)).toEqual(theirCurves(glyphs[0]!.path.commands));
    }
    const { outline } = drawn(lettering(font, "AVAST", { size: 30 }));
    const rings = flatten(outline, 5);
    expect(ringsArea(uniteRings(rings)) / ringsArea(rings)).toBeCloseTo(1, 3);
  });

  it("is refused as packed WOFF2, with the way round it", () => {
    const error = refusal(() => loadFont(fontFile("lobster", "lobster-latin-400-normal.woff2")));
    expect(error).toMatchObject({ code: "font-format", what: "this is a WOFF2 font, which is packed" });
    expect(error.fix).toContain("loadFont(await decompress(bytes))");
  });

  it("is refused when it cannot be read, with what would do", () => {
    const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
    expect(refusal(() => loadFont(new Uint8Array(0))).code).toBe("font-format");
    expect(refusal(() => loadFont(bytes("not a font at all"))).code).toBe("font-format");
    expect(refusal(() => loadFont(bytes("ttcf....."))).code).toBe("font-format");
    expect(refusal(() => loadFont(bytes("OTTO"))).code).toBe("bad-font");
    for (const length of [3, 4, 12, 60, 2000, woff.length - 100])
      expect(refusal(() => loadFont(woff.slice(0, length))).code).toMatch(/^(font-format|bad-font)$/);
    const plain = sfntOfWoff(woff, 1e7);
    for (const length of [4, 12, 60, 2000])
      expect(refusal(() => loadFont(plain.slice(0, length))).code).toBe("bad-font");
    expect(refusal(() => loadFont("Lobster" as unknown as Uint8Array)).code).toBe("wrong-type");
    expect(refusal(() => loadFont(new Uint8Array(20_000_001))).code).toBe("font-too-large");
  });

  it("does not change when the bytes that it came from do", () => {
    const bytes = sfntOfWoff(woff, 1e7).slice();
    const font = loadFont(bytes);
    const before = lettering(font, "To").params;
    bytes.fill(0);
    expect(lettering(font, "Tod Quay").params["text"]).toBe("Tod Quay");
    expect(lettering(font, "To").params).toEqual(before);
  });
});
