import { describe, expect, it } from "vitest";
import { definePlugin } from "../../src/plugin/plugin.ts";
import { fits, isVersion } from "../../src/plugin/version.ts";
import { VERSION } from "../../src/tile/version.ts";
import { buoy, pebble, refusal } from "../given.ts";

const harbour = { name: "harbour", version: "1.0.0", pieces: [buoy, pebble.piece] };
const plugin = (more: object) => () => definePlugin({ ...harbour, ...more } as never);

describe("definePlugin", () => {
  it("takes factories and bare pieces, and comes out frozen", () => {
    const made = definePlugin(harbour);
    expect(made.pieces).toEqual([buoy.piece, pebble.piece]);
    expect(Object.isFrozen(made) && Object.isFrozen(made.pieces)).toBe(true);
    expect(definePlugin(made)).toEqual(made);
  });

  it.each<[string, object, string]>([
    ["a name in capitals", { name: "Harbour" }, "plugin Harbour > name: it is not in kebab-case"],
    ["no name", { name: undefined }, "plugin undefined > name: it is not in kebab-case"],
    ["no version", { version: "1.0" }, "plugin harbour > version: it is not a semantic version"],
    [
      "a later library",
      { needs: "9.0.0" },
      `plugin harbour > needs: it needs sprigwright 9.0.0, this is ${VERSION}`,
    ],
    ["no list", { pieces: buoy }, "plugin harbour > pieces: it is not a list"],
    ["a word for a piece", { pieces: ["buoy"] }, "plugin harbour > pieces[0]: it is not a piece"],
    ["nothing for a piece", { pieces: [null] }, "plugin harbour > pieces[0]: it is not a piece"],
    ["a plain function", { pieces: [() => 1] }, "plugin harbour > pieces[0]: it is not a piece"],
    ["a use", { pieces: [buoy()] }, "plugin harbour > pieces[0]: it is not a piece"],
    ["an unknown kind", { pieces: [{ ...buoy.piece, kind: "brush" }] }, "pieces[0]: it is not a piece"],
    [
      "a piece without its work",
      { pieces: [{ ...buoy.piece, draw: undefined }] },
      "pieces[0]: it is not a piece",
    ],
    [
      "a piece of another's",
      { pieces: [{ ...buoy.piece, name: "orchard/buoy" }] },
      'pieces[0]: its name is "orchard/buoy"',
    ],
    ["a bare name", { pieces: [{ ...buoy.piece, name: "buoy" }] }, 'pieces[0]: its name is "buoy"'],
    ["twins", { pieces: [buoy, buoy] }, 'pieces[1]: "harbour/buoy" is there twice'],
  ])("refuses %s", (_, more, message) => {
    const error = refusal(plugin(more));
    expect(error.message).toContain(message);
    expect(error.code).toBe("bad-plugin");
  });

  it("refuses what is no object", () => {
    expect(refusal(() => definePlugin(undefined as never)).code).toBe("wrong-type");
  });
});

// semver.org 2.0.0, items 4 and 8: a major version breaks; below 1.0.0 anything may, so the minor one does.
describe("versions", () => {
  it("serve when they are not older and nothing broke between", () => {
    expect(fits("1.4.2", "1.4.2") && fits("1.5.0", "1.4.9") && fits("1.4.10", "1.4.9")).toBe(true);
    expect(fits("1.4.2", "1.4.3") || fits("2.0.0", "1.9.9") || fits("1.0.0", "2.0.0")).toBe(false);
    expect(fits("0.1.3", "0.1.2")).toBe(true);
    expect(fits("0.2.0", "0.1.2") || fits("0.1.1", "0.1.2")).toBe(false);
  });

  it("are three numbers", () => {
    expect(isVersion("0.1.0")).toBe(true);
    for (const text of ["1", "1.0", "1.0.0-beta", "v1.0.0", "1.0.x", 1, null, "1.0.0\n", "9999999.0.0"])
      expect(isVersion(text)).toBe(false);
  });
});
