import { describe, expect, it } from "vitest";
import { placeAt } from "../../src/layout/place-at.ts";
import { definePattern, readPattern } from "../../src/pattern/pattern.ts";
import { straight } from "../../src/repeat/straight.ts";
import { buoy, pebble, refusal } from "../given.ts";
import { inks, shore } from "../given-patterns.ts";

const parts = {
  name: "pears",
  seed: "s",
  repeat: straight({ width: 60, height: 40 }),
  layout: placeAt({ places: [{ motif: buoy({ roles: { flag: "signal" } }), x: 1, y: 1 }] }),
  colorways: { dawn: { ground: "white", float: "red", signal: "blue" } },
};
const read = (more: object) => () => readPattern({ ...parts, ...more });

describe("definePattern", () => {
  it("collects roles from the motifs in order of first use, the ground first", () => {
    expect(shore.roles).toEqual(["ground", "float", "flag", "pebble"]);
    expect(definePattern(parts).roles).toEqual(["ground", "float", "signal"]);
  });

  it("takes another order, with or without the ground", () => {
    expect(definePattern({ ...parts, roles: ["signal", "float"] }).roles).toEqual([
      "ground",
      "signal",
      "float",
    ]);
    expect(definePattern({ ...parts, roles: ["float", "ground", "signal"] }).roles).toEqual([
      "ground",
      "float",
      "signal",
    ]);
  });

  it("knows the ground without an ink of its own for knocked-out parts", () => {
    const layout = placeAt({ places: [{ motif: buoy({ roles: { flag: "ground" } }), x: 1, y: 1 }] });
    const pattern = definePattern({
      ...parts,
      layout,
      colorways: { dawn: { ground: "white", float: "red" } },
    });
    expect(pattern.roles).toEqual(["ground", "float"]);
  });

  it("is frozen, with inks as #rrggbb and an empty subject by default", () => {
    const pattern = definePattern(parts);
    expect(pattern.subject).toBe("");
    expect(pattern.colorways.dawn.inks.signal).toBe("#0000ff");
    expect(
      Object.isFrozen(pattern) && Object.isFrozen(pattern.roles) && Object.isFrozen(pattern.colorways),
    ).toBe(true);
  });

  it.each([
    [
      "an unknown option",
      { layouts: 1 },
      'pattern > layouts: there is no option "layouts"',
      'did you mean "layout"?',
    ],
    [
      "a name with spaces",
      { name: "Harbour pears" },
      'pattern > name: "Harbour pears" is not a name in kebab-case',
      "",
    ],
    ["no seed", { seed: undefined }, "pears > seed: nothing was given", "any text; it fixes every chance"],
    ["a seed as number", { seed: 7 }, "pears > seed: 7 is a number, and a seed is text", 'give "7"'],
    ["a long seed", { seed: "x".repeat(201) }, "is not text of at most 200 characters", ""],
    ["a long subject", { subject: "x".repeat(81) }, "pears > subject:", ""],
    [
      "no repeat",
      { repeat: undefined },
      "pears > repeat: nothing was given",
      "halfDrop({ width: 160, height: 120 })",
    ],
    [
      "a size for a repeat",
      { repeat: { width: 3 } },
      "pears > repeat: an object with width is not a repeat",
      "",
    ],
    ["a layout for a repeat", { repeat: parts.layout }, "pears > repeat:", "a repeat, such as"],
    ["no layout", { layout: undefined }, "pears > layout: nothing was given", "toss({ motifs: [...] })"],
    ["a motif for a layout", { layout: buoy() }, "pears > layout:", "a layout, such as"],
    [
      "a copied layout",
      { layout: JSON.parse(JSON.stringify(parts.layout)) },
      "was copied or parsed",
      "createKit",
    ],
    [
      "no colorway",
      { colorways: {} },
      "pears > colorways: an object with no keys is not 1 to 500 colorways",
      "",
    ],
    [
      "no colorways",
      { colorways: undefined },
      "pears > colorways: undefined is not an object of colorways",
      "",
    ],
    [
      "a missing ink",
      { colorways: { dawn: { ground: "white", float: "red" } } },
      'pears > colorways > dawn: no ink for "signal"',
      "give every role",
    ],
    [
      "an unknown role",
      { colorways: { dawn: { ...parts.colorways.dawn, flag: "red" } } },
      'pears > colorways > dawn > flag: there is no role "flag"',
      "use one of: ground, float, signal",
    ],
    [
      "an unparsable colour",
      { colorways: { dawn: { ...parts.colorways.dawn, float: "redd" } } },
      'pears > colorways > dawn > float: "redd" is not a CSS colour',
      "give an opaque CSS colour",
    ],
    [
      "an unknown role in the order",
      { roles: ["flag"] },
      'pears > roles[0]: there is no role "flag"',
      "float, signal",
    ],
    ["a role twice", { roles: ["float", "float", "signal"] }, "a role that was not listed before", ""],
    [
      "a role left out",
      { roles: ["float"] },
      "pears > roles: nothing was given",
      "every role: signal is not in the order",
    ],
    ["roles as text", { roles: "float" }, "pears > roles:", "a list of roles, back to front"],
  ])("refuses %s", (_, more, message, fix) => {
    const error = refusal(read(more));
    expect(error.message).toContain(message);
    expect(error.fix).toContain(fix);
  });

  it.each([null, undefined, 7, "pears", []])("refuses %j for a pattern", (given) => {
    expect(refusal(() => readPattern(given)).where).toBe("pattern");
  });

  it("gives equal roles of several motifs one ink", () => {
    const pattern = definePattern({
      ...parts,
      layout: placeAt({
        places: [
          { motif: buoy({ roles: { float: "stone", flag: "stone" } }), x: 1, y: 1 },
          { motif: pebble({ roles: { pebble: "stone" } }), x: 9, y: 9 },
        ],
      }),
      colorways: { dawn: { ground: "white", stone: "gray" } },
    });
    expect(pattern.roles).toEqual(["ground", "stone"]);
  });

  it("reads what it made again, unchanged", () => {
    expect(shore.colorways.dawn.inks).toEqual(inks.dawn);
  });
});
