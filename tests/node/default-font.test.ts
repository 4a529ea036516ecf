import { expect, it, test } from "vitest";
import { defaultFont } from "../../src/node/default-font.ts";

const font = await defaultFont();

it("the default font has the letters of the languages of Europe in Latin script, and the signs that sheets use", () => {
  // Pangrams and month names, from memory: English, German, French, Polish, Czech, Hungarian, Norwegian, Turkish.
  const words =
    "Zwölf Boxkämpfer jagen Viktor quer über den großen Sylter Deich; dès Noël où un zéphyr haï me vêt; zażółć gęślą jaźń; " +
    "příliš žluťoučký kůň; árvíztűrő tükörfúrógép; lørdag sjø ær; şöyle ığİ 0123456789 × · … – % #";
  expect([...words].filter((letter) => letter !== " " && !font.glyph(letter))).toEqual([]);
  expect(font.glyph("港")).toBeUndefined();
});

test("letters are kerned within a file of the font, and left alone between two", () => {
  const [a, v, ogonek] = ["A", "V", "ą"].map((letter) => font.glyph(letter)!);
  expect(font.kerning(a!, v!)).toBeLessThan(0);
  expect(font.kerning(a!, ogonek!)).toBe(0);
  expect(font.family).toBe("Hanken Grotesk");
});
