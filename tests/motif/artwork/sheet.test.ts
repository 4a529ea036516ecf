import { describe, expect, expectTypeOf, it } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import { inspectArtwork } from "../../../src/motif/artwork/inspect.ts";
import { artworkSheet } from "../../../src/motif/artwork/sheet.ts";
import type { MotifUse } from "../../../src/motif/motif.ts";
import { refusal } from "../../given.ts";
import { drawnBy, svgOf } from "./picture.ts";

const pear =
  '<circle fill="#c92" cx="5" cy="6" r="4"/><rect fill="#432" x="4.5" y="0" width="1" height="3"/>';
const gull = '<path fill="#eee" d="M20 4l6-2 6 2-6 4z"/>';
const buoy = '<use href="#float" x="4" y="20"/><use href="#float" x="24" y="20"/>';
const defs =
  '<defs><circle id="float" fill="#d43" r="3"/><path id="unused" d="M0 0h900"/><linearGradient id="sky"/></defs><style>.x{fill:red}</style>';

describe("a sheet of motifs", () => {
  it("is cut by the groups at its top, under their names", () => {
    const sheet = svgOf(
      `${defs}<g id="Pear Tree">${pear}</g><g data-name="gull2Sea">${gull}</g><g>${buoy}</g>`,
      40,
    );
    const set = artworkSheet(sheet, { size: 44 });
    expect(Object.keys(set)).toEqual(["pear-tree", "gull2-sea", "motif-3"]);
    expect(Object.values(set["pear-tree"]!.roles)).toEqual(["yellow", "deep-brown"]);
    expectTypeOf(set).toEqualTypeOf<Readonly<Record<string, MotifUse<string>>>>();
  });

  it("takes the names that an editor shows before those that machines give, in plain letters", () => {
    const label = 'xmlns:quay="http://example.org/editor" quay:label="Sail Boat"';
    const sheet = svgOf(
      `<g id="layer1" ${label}>${pear}</g><g id="Layer_2" data-name="Pêche">${gull}</g><g id="Old_x0020_Buoy">${buoy}</g>${defs}`,
      40,
    );
    expect(Object.keys(artworkSheet(sheet))).toEqual(["sail-boat", "peche", "old-buoy"]);
  });

  it("is cut by its groups whatever group its paper is in", () => {
    const paper = '<g id="bg"><rect width="40" height="40" fill="#fff"/></g>';
    const sheet = svgOf(`${paper}<g id="pear">${pear}</g><g id="gull">${gull}</g>`, 40);
    expect(Object.keys(artworkSheet(sheet))).toEqual(["pear", "gull"]);
  });

  it("keeps the proportions of its motifs, unless one is told its size", () => {
    const sheet = svgOf(
      `<g id="a"><rect width="20" height="9"/></g><g id="b"><rect x="30" width="5" height="2"/></g>`,
      40,
    );
    expect(artworkSheet(sheet, { size: "4cm" })).toMatchObject({
      a: { params: { size: 40 } },
      b: { params: { size: 10 } },
    });
    expect(artworkSheet(sheet, { size: 40, sizes: { b: 25 } })["b"]!.params["size"]).toBe(25);
    expect(refusal(() => artworkSheet(sheet, { sizes: { c: 25 } })).code).toBe("unknown-motif");
  });

  it("is cut where its shapes stand apart, in reading order, whatever paper lies below", () => {
    const paper = '<rect width="40" height="40" fill="#fff"/>';
    const set = artworkSheet(svgOf(`${defs}${paper}${buoy}${gull}${pear}`, 40));
    expect(Object.keys(set)).toEqual(["motif-1", "motif-2", "motif-3", "motif-4"]);
    expect(Object.values(set).map((use) => Object.keys(use.roles).join())).toEqual([
      "#cc9922,#443322",
      "#eeeeee",
      "#dd4433",
      "#dd4433",
    ]);
    // Farther apart than the sheet is told, all is one motif.
    expect(refusal(() => artworkSheet(svgOf(pear + gull, 40), { by: "clusters", apart: 0.5 })).code).toBe(
      "one-motif",
    );
  });

  it("names a cluster by the group that holds it and nothing else", () => {
    const sheet = svgOf(
      `<g id="all"><g id="pear">${pear}</g><path id="gull" fill="#eee" d="M20 4l6-2 6 2-6 4z"/></g>`,
      40,
    );
    expect(Object.keys(artworkSheet(sheet, { by: "clusters" }))).toEqual(["pear", "gull"]);
    expect(Object.keys(artworkSheet(sheet))).toEqual(["pear", "gull"]);
  });

  it("gives each motif its own part of the file and no more", () => {
    const sheet = svgOf(`${defs}<g id="pear">${pear}</g><g id="buoys">${buoy}</g>`, 40);
    const { pear: one, buoys } = artworkSheet(sheet) as Record<string, MotifUse<string>>;
    const text = one!.params["svg"] as string;
    expect(text).not.toContain("float");
    expect(text).not.toContain("unused");
    expect(buoys!.params["svg"]).toContain('id="float"');
    expect(buoys!.params["svg"]).not.toContain("#c92");
    const alone = drawnBy(one!).shapes.reduce((sum, { path }) => sum + areaOf(path), 0);
    const read = inspectArtwork(svgOf(pear, 40), { size: one!.params["size"] as number });
    expect(alone / 1e6).toBeCloseTo(
      read.roles.reduce((sum, role) => sum + role.area, 0),
      2,
    );
  });

  it("hands its options on, with the roles in the types", () => {
    const roles = { "#c92": "fruit", "#432": "stem", "#eee": "gull" } as const;
    const set = artworkSheet(svgOf(`<g id="pear">${pear}</g><g id="gull">${gull}</g>`, 40), { roles });
    expectTypeOf(set["pear"]!).toEqualTypeOf<MotifUse<"fruit" | "stem" | "gull">>();
    expect(Object.values(set["pear"]!.roles)).toEqual(["fruit", "stem"]);
    const sheet = svgOf(`<g id="pear">${pear}</g><g id="gull">${gull}</g>`, 40);
    expect(refusal(() => artworkSheet(sheet, { roles: { "#eee": "gull" } }))).toMatchObject({
      code: "missing-role",
      where: "sheet > pear > artwork > roles",
    });
  });

  it("is refused when it holds one motif, shapes beside its groups, or nothing", () => {
    const code = (body: string, options = {}): string =>
      refusal(() => artworkSheet(svgOf(body, 40), options)).code;
    expect(code(`<g>${pear}</g>`)).toBe("one-motif");
    expect(code("")).toBe("one-motif");
    expect(code(`<g>${pear}</g><g>${gull}</g><rect width="3" height="3"/>`, { by: "groups" })).toBe(
      "no-groups",
    );
    expect(code(pear + gull, { by: "layers" })).toBe("unknown-way");
    expect(code(pear + gull, { apart: Number.NaN })).toBe("number-range");
    const crumbs = Array.from(
      { length: 300 },
      (_, i) => `<rect x="${2 * (i % 20)}" y="${2 * Math.floor(i / 20)}" width="1" height="1"/>`,
    );
    expect(code(crumbs.join(""))).toBe("artwork-too-large");
  });
});
