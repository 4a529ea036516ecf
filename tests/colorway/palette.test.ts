import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { palette } from "../../src/colorway/palette.ts";
import { readPaletteJson, toPaletteJson } from "../../src/colorway/palette-json.ts";
import { refusal } from "../given.ts";

const quay = palette({ name: "quay-morning", inks: { shell: "#f6ead7", kelp: "#3f6b4f", buoy: "tomato" } });

describe("a palette", () => {
  it("is frozen, plain data of inks in their order", () => {
    expect(JSON.stringify(quay)).toBe(
      '{"name":"quay-morning","inks":{"shell":"#f6ead7","kelp":"#3f6b4f","buoy":"#ff6347"}}',
    );
    expect(Object.isFrozen(quay) && Object.isFrozen(quay.inks)).toBe(true);
    expect(palette(quay)).toEqual(quay);
  });

  it("knows its inks by name in the types", () => {
    const ink: string = quay.inks.kelp;
    expect(ink).toBe("#3f6b4f");
    // @ts-expect-error there is no such ink
    expect(quay.inks.kelpp).toBeUndefined();
  });

  const refused = (inks: unknown, more: object = {}): string =>
    refusal(() => palette({ name: "quay", inks, ...more } as never)).message;

  it("refuses two inks of one colour, naming both", () => {
    expect(refused({ buoy: "#ff6347", flag: "tomato" })).toBe(
      'palette quay > inks > flag: "buoy" and "flag" are both #ff6347\n  fix: keep one of the two [same-ink]',
    );
  });

  it("refuses an ink outside sRGB, with the ink that it would become, unless it may be mapped", () => {
    // #00c248 is what colorjs.io's css gamut mapping gives for this colour.
    const inks = { neon: "oklch(0.7 0.4 150)" };
    expect(refused(inks)).toMatch(
      /"oklch\(0\.7 0\.4 150\)" is outside sRGB.* nearest ink is #00c248, ΔE00 \d/,
    );
    expect(refused(inks)).toContain("[out-of-gamut]");
    expect(palette({ name: "quay", inks, gamut: "map" }).inks.neon).toBe("#00c248");
  });

  it.each([
    [{}, "empty-palette"],
    [{ buoy: "tomatoe" }, "bad-color"],
    [{ buoy: "rgb(0 0 0 / 50%)" }, "bad-color"],
    [{ Buoy: "tomato" }, "wrong-type"],
    [{ 7: "tomato" }, "wrong-type"],
    [["tomato"], "wrong-type"],
    [null, "wrong-type"],
    [Object.fromEntries(Array.from({ length: 201 }, (_, i) => [`ink-${i}`, "red"])), "too-many-inks"],
    [JSON.parse('{"__proto__":"red"}'), "wrong-type"],
  ])("refuses %j", (inks, code) => expect(refused(inks)).toContain(`[${code}]`));

  it("refuses a bad name and options that it does not know", () => {
    for (const name of ["Quay", "", 7, "a b", "-a", "x".repeat(41)])
      expect(refusal(() => palette({ name, inks: { a: "red" } } as never)).code).toBe("wrong-type");
    expect(refused({ a: "red" }, { gammut: "map" })).toContain('did you mean "gamut"');
    expect(refused({ a: "red" }, { gamut: "clip" })).toContain("[unknown-choice]");
    expect(refusal(() => palette(null as never)).code).toBe("wrong-type");
  });
});

describe("palettes as JSON", () => {
  it("come back as they were", () => {
    const names = fc.uniqueArray(fc.stringMatching(/^[a-z][a-z0-9-]{0,12}$/), {
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(names, fc.nat(0xffff), (inks, start) => {
        const made = palette({
          name: "sea",
          inks: Object.fromEntries(
            inks.map((ink, i) => [ink, `#${(start * 200 + i).toString(16).padStart(6, "0")}`]),
          ),
        });
        const [back] = readPaletteJson(toPaletteJson(made));
        expect(JSON.stringify(back)).toBe(JSON.stringify(made));
      }),
      { seed: 51, numRuns: 60 },
    );
  });

  it("may be one or many, in any CSS colours", () => {
    expect(readPaletteJson('{"name":"a","inks":{"x":"navy"}}')).toEqual([
      { name: "a", inks: { x: "#000080" } },
    ]);
    const two = [quay, palette({ name: "b", inks: { x: "#123456" } })];
    expect(readPaletteJson(toPaletteJson(two))).toEqual(two);
  });

  it.each([
    ["{", "bad-json"],
    ["[]", "wrong-type"],
    ["7", "wrong-type"],
    ['[{"name":"a","inks":{"x":"red"}},{"name":"a","inks":{"x":"red"}}]', "same-name"],
    ['{"name":"a","inks":{"x":"red"},"more":1}', "unknown-option"],
    [" ".repeat(4_000_001), "palettes-too-large"],
    [
      JSON.stringify(Array.from({ length: 1001 }, (_, i) => ({ name: `p${i}`, inks: { x: "red" } }))),
      "palettes-too-large",
    ],
  ])("%.40s is refused", (text, code) => expect(refusal(() => readPaletteJson(text)).code).toBe(code));
});
