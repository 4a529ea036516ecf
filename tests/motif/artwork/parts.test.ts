import { describe, expect, expectTypeOf, it } from "vitest";
import { artwork } from "../../../src/motif/artwork/artwork.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { useMotif } from "../../../src/motif/define.ts";
import type { MotifUse } from "../../../src/motif/motif.ts";
import { refusal } from "../../given.ts";
import { drawnBy, svgOf } from "./picture.ts";

const boat = svgOf(
  '<g id="boat"><path id="hull" fill="#335" d="M2 20h28l-5 8h-18z"/>' +
    '<g data-name="Sails" class="cloth"><path class="jib" fill="#fff" d="M15 2v16h-9z"/><path fill="#eee" d="M17 2v16h9z"/></g></g>' +
    '<circle fill="#fc0" cx="27" cy="5" r="3"/><path fill="#335" d="M0 29h32v2h-32z"/>',
);
const roles = (given: Readonly<Record<string, string>>): Record<string, string> => ({
  ...readArtwork(boat, { roles: given }).roles,
});
const sun = { "#ffcc00": "sun" };

describe("roles by name", () => {
  it("go to an id, leaving the same colour elsewhere to its own", () => {
    expect(
      roles({ ...sun, "id:hull": "hull", "#333355": "sea", "#ffffff": "sail", "#eeeeee": "sail" }),
    ).toEqual({
      "id:hull": "hull",
      "#333355": "sea",
      "#ffffff": "sail",
      "#eeeeee": "sail",
      "#ffcc00": "sun",
    });
  });

  it("go to a class, a group by its label, and a group by its id", () => {
    expect(roles({ ...sun, "class:jib": "jib", "#eeeeee": "main", "#333355": "hull" })["class:jib"]).toBe(
      "jib",
    );
    expect(roles({ ...sun, "class:cloth": "sail", "#333355": "hull" })["class:cloth"]).toBe("sail");
    expect(roles({ ...sun, "group:Sails": "sail", "#333355": "hull" })["group:Sails"]).toBe("sail");
    expect(roles({ ...sun, "group:boat": "boat", "#333355": "sea" })).toEqual({
      "group:boat": "boat",
      "#333355": "sea",
      "#ffcc00": "sun",
    });
  });

  it("prefer an id to a class, a class to a group, the inner group to the outer, and all to a colour", () => {
    const all = {
      ...sun,
      "group:boat": "boat",
      "group:Sails": "sail",
      "class:jib": "jib",
      "id:hull": "hull",
      "#333355": "sea",
    };
    expect(
      drawnBy(readArtwork(boat, { roles: all }))
        .shapes.map((shape) => shape.role)
        .sort(),
    ).toEqual(["hull", "jib", "sail", "sea", "sun"]);
  });

  it("are known to the types, and come back from a recipe", () => {
    const use = readArtwork(boat, { roles: { "group:boat": "boat", "#335": "sea", "#fc0": "sun" } });
    expectTypeOf(use).toEqualTypeOf<MotifUse<"boat" | "sea" | "sun">>();
    const { use: _, params, ...others } = JSON.parse(JSON.stringify(use));
    expect(drawnBy(useMotif(artwork, { ...params, ...others }))).toEqual(drawnBy(use));
  });

  it("pass over a name that this drawing lacks, and refuse what is neither colour nor name", () => {
    expect(refusal(() => roles({ ...sun, "id:mast": "mast", "#335": "hull" })).code).toBe("missing-role");
    expect(refusal(() => roles({ ...sun, "layer:boat": "boat" })).code).toBe("unknown-fill");
    expect(refusal(() => roles({ ...sun, "id:": "boat" })).code).toBe("unknown-fill");
  });
});
