import { describe, expect, it } from "vitest";
import { readColorway, readColorways } from "../../src/colorway/read.ts";
import { refusal } from "../given.ts";

const roles = ["ground", "leaf", "fruit"];
const inks = { ground: "white", leaf: "#3f6b4f", fruit: "oklch(0.7 0.12 50)" };
const read = (given: unknown, name = "dawn") =>
  readColorway(name, given, roles, `pears > colorways > ${name}`);

describe("a colorway", () => {
  it("comes out as frozen #rrggbb in the order of the roles", () => {
    const colorway = read({ fruit: inks.fruit, leaf: inks.leaf, ground: inks.ground });
    expect(Object.entries(colorway.inks)).toEqual([
      ["ground", "#ffffff"],
      ["leaf", "#3f6b4f"],
      ["fruit", "#da8757"],
    ]);
    expect(Object.isFrozen(colorway) && Object.isFrozen(colorway.inks)).toBe(true);
  });

  it("lacks no ink", () => {
    expect(refusal(() => read({ leaf: "green" })).message).toBe(
      'pears > colorways > dawn: no ink for "ground", "fruit"\n' +
        "  fix: give every role that the pattern draws a colour, the ground included [missing-ink]",
    );
    expect(refusal(() => read({ ...inks, fruit: undefined })).code).toBe("missing-ink");
  });

  it("names no role that nothing draws", () => {
    expect(refusal(() => read({ ...inks, leef: "red" })).message).toBe(
      'pears > colorways > dawn > leef: there is no role "leef"\n' +
        '  fix: did you mean "leaf"? Known: ground, leaf, fruit [unknown-role]',
    );
    expect(refusal(() => read(JSON.parse('{"__proto__":"#fff"}'))).code).toBe("unknown-role");
  });

  it("misses an ink even for a role called like something that every object has", () => {
    expect(
      refusal(() => readColorway("dawn", { ground: "white" }, ["ground", "constructor"], "x")).code,
    ).toBe("missing-ink");
  });

  it.each([[7], [null], [["white"]], ["white"]])("is an object: %j is not", (given) => {
    expect(refusal(() => read(given)).what).toMatch(/is not an object that gives each role a colour$/);
  });

  it("has a kebab-case name", () => {
    for (const name of ["First Light", "", "x".repeat(61), "../up", "Dawn", null, 3])
      expect(refusal(() => readColorway(name, inks, roles, "x")).what).toMatch(/is not a name in kebab-case/);
  });
});

describe("colorways", () => {
  it("are 1 to 500, by name", () => {
    const many = Object.fromEntries(Array.from({ length: 501 }, (_, i) => [`c${i}`, inks]));
    for (const given of [{}, many])
      expect(refusal(() => readColorways(given, roles, "x")).what).toContain("1 to 500 colorways");
    expect(refusal(() => readColorways([inks], roles, "x")).what).toContain("an object of colorways by name");
    expect(Object.keys(readColorways({ dawn: inks, dusk: inks }, roles, "x"))).toEqual(["dawn", "dusk"]);
  });
});
