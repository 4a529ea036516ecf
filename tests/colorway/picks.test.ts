import fc from "fast-check";
import { expect, it } from "vitest";
import { readPicks } from "../../src/colorway/picks.ts";
import { SprigwrightError } from "../../src/errors/error.ts";
import { refusal } from "../given.ts";

const known = ["dawn", "high-tide", "lichen"];
const read = (text: string): readonly string[] => readPicks(text, known, "garden.picks.json");

it("picks are read in their order, each once", () => {
  expect(read('{ "colorways": ["lichen", "dawn", "lichen"] }')).toEqual(["lichen", "dawn"]);
});

it("picks that an editor saved with a byte order mark are read all the same", () => {
  expect(read('\ufeff{ "colorways": ["dawn"] }')).toEqual(["dawn"]);
});

it.each([
  ["no JSON", "colorways: dawn", "bad-json", "colorways"],
  ["a bare list", '["dawn"]', "wrong-type", '"colorways"'],
  ["an empty list", '{ "colorways": [] }', "no-colorways", "list some"],
  ["nothing", "{}", "wrong-type", "picked"],
  ["an unknown key", '{ "colorway": ["dawn"], "colorways": ["dawn"] }', "unknown-option", '"colorways"'],
  ["an unknown name", '{ "colorways": ["dawn", "hightide"] }', "unknown-colorway", '"high-tide"'],
  ["a number", '{ "colorways": [3] }', "wrong-type", "name of a colorway"],
  ["a name of the language's own", '{ "colorways": ["__proto__"] }', "unknown-colorway", "dawn"],
  ["a flood", `{ "colorways": ["${"a".repeat(100_001)}"] }`, "bad-json", "alone"],
])("refuses %s", (_, text, code, words) => {
  const error = refusal(() => read(text));
  expect(error.code).toBe(code);
  expect(error.fix).toContain(words);
  expect(error.where).toContain("garden.picks.json");
});

it("any text gives known names or a clear error", () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
      try {
        expect(known).toEqual(expect.arrayContaining([...read(text)]));
      } catch (error) {
        expect(error).toBeInstanceOf(SprigwrightError);
      }
    }),
    { numRuns: 300, seed: 9 },
  );
});
