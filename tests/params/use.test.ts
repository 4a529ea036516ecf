import { expect, it } from "vitest";
import { definitionOf, isUse } from "../../src/params/use.ts";
import { buoy, refusal } from "../given.ts";

it("a use is plain data that remembers its definition out of sight", () => {
  const use = buoy({ size: 12 });
  expect(JSON.parse(JSON.stringify(use))).toEqual({
    use: "harbour/buoy",
    params: { size: 12 },
    roles: { float: "float", flag: "flag" },
    vary: 0,
    variants: 1,
  });
  expect(Object.keys(use)).not.toContain("piece");
  expect(definitionOf(use, "x")).toBe(buoy.piece);
  expect(Object.isFrozen(use)).toBe(true);
});

it("a copy has forgotten it, and says what to do", () => {
  const copy = JSON.parse(JSON.stringify(buoy())) as ReturnType<typeof buoy>;
  expect(refusal(() => definitionOf(copy, "pattern > layout")).message).toBe(
    'pattern > layout: "harbour/buoy" was copied or parsed, so it no longer knows its definition\n' +
      "  fix: build it through a kit that has the piece: createKit({ plugins }).build(recipe) [unbound-piece]",
  );
});

it("tells a use from other objects", () => {
  expect(isUse({ use: "a/b", params: {} })).toBe(true);
  for (const value of [null, {}, { use: "a/b" }, { use: 1, params: {} }, { use: "a/b", params: [] }])
    expect(isUse(value)).toBe(false);
});
