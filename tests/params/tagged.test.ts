import { describe, expect, it } from "vitest";
import { integer, length } from "../../src/params/kinds.ts";
import { tagged } from "../../src/params/tagged.ts";
import { refusal } from "../given.ts";

const knot = tagged(
  "kind",
  {
    bow: { loops: integer({ about: "Loops.", min: 1, max: 3, default: 2 }) },
    hitch: { rope: length({ about: "Rope.", min: 1, max: 9 }) },
  },
  { about: "A knot." },
);

describe("a tagged object", () => {
  it("is read by the parameters of its kind, and reading it again changes nothing", () => {
    const read = knot.read({ kind: "bow" }, "knot");
    expect(read).toEqual({ kind: "bow", loops: 2 });
    expect(Object.isFrozen(read)).toBe(true);
    expect(knot.read(read, "knot")).toEqual(read);
    expect(knot.read({ kind: "hitch", rope: "0.5cm" }, "knot")).toEqual({ kind: "hitch", rope: 5 });
  });

  it("is described by one schema for each kind", () => {
    const { oneOf } = knot.schema as { oneOf: { properties: object; required: string[] }[] };
    expect(oneOf.map(({ required }) => required)).toEqual([["kind"], ["kind", "rope"]]);
    expect(oneOf.map(({ properties }) => Object.keys(properties))).toEqual([
      ["kind", "loops"],
      ["kind", "rope"],
    ]);
  });

  it.each([
    [undefined, "knot: nothing was given"],
    ["bow", 'knot: "bow" is not an object with kind: "bow", "hitch"'],
    [{}, "knot > kind: nothing was given\n  fix: give one of bow, hitch"],
    [{ kind: "hich" }, 'knot > kind: there is no choice "hich"\n  fix: did you mean "hitch"?'],
    [{ kind: "__proto__" }, "there is no choice"],
    [{ kind: "toString" }, "there is no choice"],
    [{ kind: "bow", rope: 3 }, 'knot > rope: there is no option "rope"'],
    [{ kind: "hitch" }, "knot > rope: nothing was given"],
    [{ kind: "hitch", rope: Number.NaN }, "knot > rope: NaN is not a length"],
  ])("refuses %j", (value, message) => {
    expect(refusal(() => knot.read(value, "knot")).message).toContain(message);
  });
});
