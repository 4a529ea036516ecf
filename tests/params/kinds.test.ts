import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isRecord, list, object, optional, readParams, schemaOf } from "../../src/params/compound.ts";
import { choice, flag, integer, length, number, share, span, text, turns } from "../../src/params/kinds.ts";
import type { ParamSpec } from "../../src/params/param.ts";
import { refusal } from "../given.ts";

const about = "What it does.";

describe("numbers", () => {
  it("take the ends of their range, and refuse what is past them with the range", () => {
    const half = number({ about, min: 0, max: 0.5 });
    expect(half.read(0, "x")).toBe(0);
    expect(half.read(0.5, "x")).toBe(0.5);
    expect(refusal(() => half.read(0.51, "toss > spread")).message).toBe(
      "toss > spread: 0.51 is outside 0 to 0.5\n  fix: give a value from 0 to 0.5 [number-range]",
    );
  });

  it("never let -0, NaN, infinity or text through", () => {
    expect(Object.is(number({ about, min: -1, max: 1 }).read(-0, "x"), 0)).toBe(true);
    for (const value of [Number.NaN, Infinity, "0.5", null, true, [1]])
      expect(refusal(() => share({ about }).read(value, "x")).code).toBe("wrong-type");
  });

  it("are whole where they count", () => {
    expect(integer({ about, min: 1, max: 9 }).read(9, "x")).toBe(9);
    expect(refusal(() => integer({ about, min: 1, max: 9 }).read(2.5, "set > rows")).what).toBe(
      "2.5 is not a whole number from 1 to 9",
    );
  });

  it("are turns from -1 to 1, and shares from 0 to 1", () => {
    expect(turns({ about }).read(-0.25, "x")).toBe(-0.25);
    expect(refusal(() => turns({ about }).read(90, "x")).message).toBe(
      "x: 90 is outside -1 to 1\n  fix: give an angle in turns from -1 to 1: 0.25 is a quarter turn [number-range]",
    );
    expect(refusal(() => share({ about }).read(-0.1, "x")).what).toBe("-0.1 is outside 0 to 1");
  });

  it("are shares: a part of a hundred is shown as the share that it is", () => {
    const fixOf = (given: unknown) => refusal(() => share({ about }).read(given, "x"));
    for (const [given, code, fix] of [
      [35, "number-range", "give a number from 0 to 1: 35 % is 0.35"],
      ["35%", "wrong-type", "give a number from 0 to 1: 35 % is 0.35"],
      [" 12.5 % ", "wrong-type", "give a number from 0 to 1: 12.5 % is 0.125"],
      [100, "number-range", "give a number from 0 to 1: 100 % is 1"],
      [101, "number-range", "give a value from 0 to 1"],
      [1.2, "number-range", "give a value from 0 to 1"],
      ["0.35", "wrong-type", "give a number from 0 to 1"],
      ["300%", "wrong-type", "give a number from 0 to 1"],
    ] as const)
      expect(fixOf(given)).toMatchObject({ code, fix });
    expect(fixOf(35).what).toBe("35 is outside 0 to 1");
    expect(fixOf("35%").what).toBe('"35%" is not a number from 0 to 1');
  });

  it("are spans: one number stands for both ends", () => {
    const scale = span({ about, min: 0, max: 2 });
    expect(scale.read(1, "x")).toEqual([1, 1]);
    expect(scale.read([0.5, 2], "x")).toEqual([0.5, 2]);
    expect(Object.isFrozen(scale.read(1, "x"))).toBe(true);
    expect(refusal(() => scale.read([1.2, 0.8], "x")).message).toBe(
      "x: [1.2, 0.8] does not have the least first\n  fix: give [0.8, 1.2] [wrong-type]",
    );
    expect(refusal(() => scale.read([1], "x")).code).toBe("wrong-type");
    expect(refusal(() => scale.read([1, 3], "x")).code).toBe("number-range");
  });
});

describe("lengths", () => {
  it("reach the piece in mm, whatever unit they were given in", () => {
    const gap = length({ about, min: 0, max: 60, default: "0.2cm" });
    expect(gap.read("1in", "x")).toBe(25.4);
    expect(gap.read(undefined, "x")).toBe(2);
    expect(refusal(() => gap.read(-3, "toss > gap")).message).toBe(
      "toss > gap: -3 mm is outside 0 mm to 60 mm\n  fix: give a value from 0 mm to 60 mm [length-range]",
    );
  });

  it("must be given where there is no default", () => {
    const error = refusal(() => length({ about, min: 5, max: 100 }).read(undefined, "straight > width"));
    expect(error.message).toBe(
      "straight > width: nothing was given\n  fix: give a length from 5 mm to 100 mm [missing-option]",
    );
  });
});

describe("words and flags", () => {
  it("choose among names, with the nearest one offered", () => {
    const density = choice({ about, of: ["airy", "even", "packed"] });
    expect(density.read("even", "x")).toBe("even");
    expect(refusal(() => density.read("evn", "toss > density")).message).toBe(
      'toss > density: there is no choice "evn"\n  fix: did you mean "even"? Known: airy, even, packed [unknown-choice]',
    );
    expect(refusal(() => density.read(["even"], "x")).code).toBe("wrong-type");
  });

  it("are true or false, not nearly so", () => {
    expect(flag({ about }).read(false, "x")).toBe(false);
    for (const value of [0, 1, "true", null])
      expect(refusal(() => flag({ about }).read(value, "x")).what).toContain("is not true or false");
  });

  it("are text of bounded length", () => {
    expect(text({ about, max: 3 }).read("abc", "x")).toBe("abc");
    expect(refusal(() => text({ about, max: 3 }).read("abcd", "x")).what).toBe(
      '"abcd" is not text of at most 3 characters',
    );
  });
});

const spec = {
  width: length({ about, min: 5, max: 100 }),
  petals: integer({ about, min: 3, max: 24, default: 5 }),
  places: list(
    object({ x: number({ about, min: 0, max: 1 }), flip: flag({ about, default: false }) }, { about }),
    {
      about,
      min: 0,
      max: 3,
      default: [],
    },
  ),
  note: optional(text({ about, max: 9 })),
} satisfies ParamSpec;

describe("a set of parameters", () => {
  it("is completed with defaults and frozen through and through", () => {
    const read = readParams(spec, { width: 10, places: [{ x: 1 }] }, "leaf");
    expect(read).toEqual({ width: 10, petals: 5, places: [{ x: 1, flip: false }], note: undefined });
    for (const part of [read, read.places, read.places[0]]) expect(Object.isFrozen(part)).toBe(true);
  });

  it("does not change when it is read again", () => {
    fc.assert(
      fc.property(
        fc.record({
          width: fc.double({ min: 5, max: 100, noNaN: true }),
          petals: fc.option(fc.integer({ min: 3, max: 24 }), { nil: undefined }),
          places: fc.array(fc.record({ x: fc.double({ min: 0, max: 1, noNaN: true }), flip: fc.boolean() }), {
            maxLength: 3,
          }),
        }),
        (given) => {
          const once = readParams(spec, given, "leaf");
          expect(readParams(spec, once, "leaf")).toEqual(once);
          expect(readParams(spec, JSON.parse(JSON.stringify(once)), "leaf")).toEqual(once);
        },
      ),
      { seed: 3 },
    );
  });

  it("refuses unknown names with the nearest known one", () => {
    expect(refusal(() => readParams(spec, { width: 9, petal: 3 }, "leaf")).message).toBe(
      'leaf > petal: there is no option "petal"\n  fix: did you mean "petals"? Known: width, petals, places, note [unknown-option]',
    );
  });

  it("knows what the trade calls some of them", () => {
    const known = { gap: length({ about, min: 0, max: 9 }), flip: flag({ about }) };
    for (const [word, name] of [
      ["spacing", "gap"],
      ["mirror", "flip"],
    ] as const)
      expect(refusal(() => readParams(known, { [word]: 1 }, "toss")).message).toBe(
        `toss > ${word}: there is no option "${word}"\n  fix: did you mean "${name}"? Known: gap, flip [unknown-option]`,
      );
    expect(refusal(() => readParams(spec, { spacing: 1 }, "leaf")).fix).toContain("use one of: width");
    expect(refusal(() => readParams(known, { constructor: 1 }, "toss")).fix).toContain("use one of");
  });

  it("names the entry of a list that is wrong, counting from 0", () => {
    const error = refusal(() => readParams(spec, { width: 9, places: [{ x: 0 }, { x: 2 }] }, "leaf"));
    expect(error.where).toBe("leaf > places[1] > x");
    expect(refusal(() => readParams(spec, { width: 9, places: [{}, {}, {}, {}] }, "leaf")).message).toBe(
      "leaf > places: 4 entries is outside 0 entries to 3 entries\n  fix: give a value from 0 entries to 3 entries [list-length]",
    );
  });

  it("reads a hole in a list as an entry that is missing", () => {
    const holed: unknown[] = [{ x: 0 }, { x: 1 }];
    delete holed[0];
    expect(
      refusal(() => list(number({ about, min: 0, max: 1 }), { about, min: 1, max: 3 }).read(holed, "x"))
        .where,
    ).toBe("x[0]");
  });

  it("is not fooled by names that every object inherits", () => {
    for (const key of ["__proto__", "constructor", "toString"]) {
      const given: unknown = JSON.parse(`{"width":9,"${key}":{"petals":7}}`);
      expect(refusal(() => readParams(spec, given, "leaf")).code).toBe("unknown-option");
    }
    const heir: unknown = Object.create({ width: 9 });
    expect(refusal(() => readParams(spec, heir, "leaf")).code).toBe("wrong-type");
  });

  it("takes plain objects only", () => {
    for (const value of [[], 7, "x", new Map(), new Date(0), () => 1])
      expect(refusal(() => readParams(spec, value, "leaf")).what).toContain("is not an object of options");
    expect(isRecord(Object.create(null))).toBe(true);
    expect(isRecord(null)).toBe(false);
  });

  it("describes itself as a JSON Schema that says what must be given", () => {
    expect(schemaOf(spec)).toMatchObject({
      type: "object",
      required: ["width"],
      additionalProperties: false,
      properties: {
        petals: { type: "integer", minimum: 3, maximum: 24, default: 5, description: about },
        places: { type: "array", items: { type: "object", required: ["x"] } },
      },
    });
  });
});
