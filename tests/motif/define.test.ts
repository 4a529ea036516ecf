import { describe, expect, it } from "vitest";
import { useMotif } from "../../src/motif/define.ts";
import { buoy, refusal } from "../given.ts";

describe("a motif's factory", () => {
  it("fills in defaults, and maps parts to roles in the order they are drawn", () => {
    const use = buoy({ roles: { flag: "signal" } });
    expect(use.params).toEqual({ size: 10 });
    expect(Object.entries(use.roles)).toEqual([
      ["float", "float"],
      ["flag", "signal"],
    ]);
    expect([use.vary, use.variants]).toEqual([0, 1]);
  });

  it("makes four drawings when it varies, or as many as are asked for", () => {
    expect(buoy({ vary: 0.5 }).variants).toBe(4);
    expect(buoy({ vary: 0.5, variants: 9 }).variants).toBe(9);
  });

  it("carries its piece, by name", () => {
    expect(buoy.piece).toMatchObject({ kind: "motif", name: "harbour/buoy", parts: ["float", "flag"] });
    expect(Object.isFrozen(buoy)).toBe(true);
  });

  it.each([
    [{ sise: 3 }, 'buoy > sise: there is no option "sise"', 'did you mean "size"?'],
    [{ size: -3 }, "buoy > size: -3 mm is outside 1 mm to 500 mm", "give a value from 1 mm to 500 mm"],
    [{ size: Number.NaN }, "buoy > size: NaN is not a length", "give a length"],
    [{ roles: { flga: "x" } }, 'buoy > roles > flga: there is no part "flga"', 'did you mean "flag"?'],
    [{ roles: { flag: "Red Ink" } }, 'buoy > roles > flag: "Red Ink" is not a role name', "kebab-case"],
    [{ roles: { flag: 3 } }, "buoy > roles > flag: 3 is not a role name", "kebab-case"],
    [{ roles: [] }, "buoy > roles: a list of 0 is not an object that maps parts to roles", "give an object"],
    [{ vary: 2 }, "buoy > vary: 2 is outside 0 to 1", "give a value from 0 to 1"],
    [{ vary: 1, variants: 65 }, "buoy > variants: 65 is outside 1 to 64", "1 to 64"],
    [{ variants: 3 }, "buoy > variants: all 3 drawings would be alike, since vary is 0", "such as vary: 0.3"],
    [null, "buoy: null is not an object of options", "give an object of options"],
  ])("refuses %j", (options, what, fix) => {
    const error = refusal(() => useMotif(buoy.piece, options));
    expect(error.message).toContain(what);
    expect(error.fix).toContain(fix);
  });

  it("refuses a part called __proto__, even where the drawing names its own parts", () => {
    const roles: unknown = JSON.parse('{"__proto__": "leaf"}');
    for (const piece of [buoy.piece, { ...buoy.piece, parts: "drawn" as const }])
      expect(refusal(() => useMotif(piece, { roles })).code).toBe("unknown-part");
  });

  it("may knock the ground out through a part", () => {
    expect(buoy({ roles: { flag: "ground" } }).roles).toEqual({ float: "float", flag: "ground" });
  });
});
