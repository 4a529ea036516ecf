import { describe, expect, it } from "vitest";
import * as catalogue from "../../src/errors/catalogue.ts";
import { SprigwrightError, within } from "../../src/errors/error.ts";
import { refusal } from "../given.ts";

const example = {
  code: "length-range",
  where: "gap",
  what: "-3 mm is outside 0 mm to 60 mm",
  fix: "give more",
};

describe("SprigwrightError", () => {
  it("reads as place, fault, cure and code", () => {
    expect(new SprigwrightError(example).message).toBe(
      "gap: -3 mm is outside 0 mm to 60 mm\n  fix: give more [length-range]",
    );
  });

  it("is an Error with its own name, and keeps its parts and its cause for programs", () => {
    const cause = new Error("below");
    const error = new SprigwrightError({ ...example, cause });
    expect(error).toBeInstanceOf(Error);
    expect(error.name).toBe("SprigwrightError");
    expect(error).toMatchObject(example);
    expect(error.cause).toBe(cause);
    expect("cause" in new SprigwrightError(example)).toBe(false);
  });

  it("keeps its place on one line of bounded length, whatever names come from outside", () => {
    const error = new SprigwrightError({ ...example, where: `recipe > ${"x\n".repeat(1e6)}` });
    expect(error.where.length).toBeLessThan(450);
    expect(error.message.split("\n")).toHaveLength(2);
  });
});

describe("within", () => {
  it("puts the outer name before the inner one and keeps the rest", () => {
    const cause = new Error("below");
    const error = refusal(() =>
      within("pears", () =>
        within("layout", () => {
          throw new SprigwrightError({ ...example, cause });
        }),
      ),
    );
    expect(error.where).toBe("pears > layout > gap");
    expect(error).toMatchObject({ code: example.code, what: example.what, fix: example.fix, cause });
  });

  it("returns what the work returns, and leaves errors of others alone", () => {
    expect(within("a", () => 7)).toBe(7);
    expect(() =>
      within("a", () => {
        throw new TypeError("not ours");
      }),
    ).toThrow(TypeError);
  });
});

describe("shown values", () => {
  it.each([
    [-3, "-3"],
    [Number.NaN, "NaN"],
    [undefined, "undefined"],
    [null, "null"],
    [12n, "12"],
    [Symbol("s"), "Symbol(s)"],
    ["peach", '"peach"'],
    ["x".repeat(99), `"${"x".repeat(40)}…"`],
    [["a", "b"], "a list of 2"],
    [{ a: 1, b: 2 }, "an object with a, b"],
    [{}, "an object with no keys"],
    [() => 1, "a function"],
  ])("%s", (value, text) => {
    expect(catalogue.shown(value)).toBe(text);
  });
});

describe("the catalogue", () => {
  it("offers the nearest known name, and the known names", () => {
    const error = catalogue.unknownName("inks > leef", "role", "leef", ["ground", "leaf"]);
    expect(error.message).toBe(
      'inks > leef: there is no role "leef"\n  fix: did you mean "leaf"? Known: ground, leaf [unknown-role]',
    );
    expect(catalogue.unknownName("x", "role", "zebra", ["leaf"]).fix).toBe("use one of: leaf");
    expect(catalogue.unknownName("x", "role", "zebra", []).fix).toBe("use one of: none");
  });

  it("has only kebab-case codes", () => {
    const errors = [
      catalogue.wrongType("w", 1, "a role"),
      catalogue.missingOption("w", "a role"),
      catalogue.outOfRange("w", 3, { min: 0, max: 1 }, "mm", "length-range"),
      catalogue.unknownName("w", "output option", "a", []),
      catalogue.missingInk("w", ["leaf"]),
      catalogue.badColor("w", "x"),
      catalogue.notWholePixels("w", { width: 1, height: 1 }, 150, { sizes: ["a"], dpis: [] }),
      catalogue.motifTooLarge("w", "x", "draw it smaller"),
      catalogue.badShape("w", "x"),
      catalogue.pieceFailed("w", new Error("x")),
      catalogue.unboundPiece("w", "a/b"),
    ];
    for (const { code, fix, message } of errors) {
      expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(fix.length).toBeGreaterThan(3);
      expect(message).toBe(message.trim());
    }
  });

  it("says a range with its unit", () => {
    expect(catalogue.outOfRange("gap", -3, { min: 0, max: 60 }, "mm", "length-range").message).toBe(
      "gap: -3 mm is outside 0 mm to 60 mm\n  fix: give a value from 0 mm to 60 mm [length-range]",
    );
  });
});

it("spells out what would steer a terminal or turn text round", () => {
  const parts = { code: "x", where: "a > \u001b[2Jb", what: "it is \u202etxt\u009b", fix: "do\u0007" };
  const error = new SprigwrightError(parts);
  expect(error.message).toBe("a > \\u{1b}[2Jb: it is \\u{202e}txt\\u{9b}\n  fix: do\\u{7} [x]");
});
