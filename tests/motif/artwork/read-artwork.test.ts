import { describe, expect, expectTypeOf, it } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import { artwork } from "../../../src/motif/artwork/artwork.ts";
import { inspectArtwork } from "../../../src/motif/artwork/inspect.ts";
import { readArtwork } from "../../../src/motif/artwork/read-artwork.ts";
import { useMotif } from "../../../src/motif/define.ts";
import type { MotifUse } from "../../../src/motif/motif.ts";
import { refusal } from "../../given.ts";
import { drawnBy, svgOf } from "./picture.ts";

const pear = svgOf(
  '<ellipse fill="#FF822D" cx="16" cy="20" rx="9" ry="10"/><rect fill="#ff8" x="12" y="16" width="2" height="4"/>' +
    '<rect fill="#593b39" x="15" y="4" width="2" height="8"/>',
);

describe("an imported drawing", () => {
  it("calls its roles after its colours", () => {
    const use = readArtwork(pear, { size: "4cm" });
    expect(use).toMatchObject({ use: artwork.name, params: { size: 40 }, vary: 0, variants: 1 });
    expect(use.roles).toEqual({ "#ff822d": "orange", "#ffff88": "pale-yellow", "#593b39": "deep-brown" });
    expectTypeOf(use).toEqualTypeOf<MotifUse<string>>();
  });

  it("fills the roles that it is told to, and the types know them", () => {
    const use = readArtwork(pear, { roles: { "#ff822d": "fruit", "#FFFF88": "light", "#593b39": "stem" } });
    expect(drawnBy(use).shapes.map((shape) => shape.role)).toEqual(["fruit", "light", "stem"]);
    expectTypeOf(use).toEqualTypeOf<MotifUse<"fruit" | "light" | "stem">>();
  });

  it("numbers roles whose colours have one name", () => {
    const rects = ["#ff822d", "#ff7f2a", "#ff8533"].map(
      (fill, i) => `<rect fill="${fill}" x="${2 * i}" width="1" height="1"/>`,
    );
    expect(Object.values(readArtwork(svgOf(rects.join(""))).roles)).toEqual([
      "orange",
      "orange-2",
      "orange-3",
    ]);
  });

  it("may merge several fills into one role without changing what is seen", () => {
    // Bottom, middle, top: the outer two become one, so the middle must let the top through.
    const body = ["#ff0000", "#ffffff", "#ff0100"].map((fill, i) => {
      const inset = 4 * i;
      return `<rect fill="${fill}" x="${inset}" y="${inset}" width="${32 - 2 * inset}" height="${32 - 2 * inset}"/>`;
    });
    const use = readArtwork(svgOf(body.join("")), {
      size: 32,
      roles: { "#ff0000": "red", "#ffffff": "paper", "#ff0100": "red" },
    });
    const { shapes } = drawnBy(use);
    expect(shapes.map(({ role, path }) => [role, Math.round(areaOf(path) / 1e6)])).toEqual([
      ["red", 1024],
      ["paper", 24 * 24 - 16 * 16],
    ]);
  });

  it("refuses roles that leave a fill unnamed, listing it to be copied", () => {
    expect(refusal(() => readArtwork(pear, { roles: { "#ff822d": "fruit" } })).message).toBe(
      "artwork > roles: no role is given for 2 of 3 fills\n" +
        '  fix: add a role for each, such as "#ffff88": "pale-yellow", "#593b39": "deep-brown" [missing-role]',
    );
  });

  it("takes one map for a whole set of drawings: fills that this one lacks are passed over", () => {
    const shared = { "#ff822d": "fruit", "#ffff88": "light", "#593b39": "stem", "#00a6ed": "sea" };
    expect(Object.values(readArtwork(pear, { roles: shared }).roles).sort()).toEqual([
      "fruit",
      "light",
      "stem",
    ]);
  });

  it("names the fill that a slip in the map leaves without a role", () => {
    const roles = { "#ff822e": "fruit", "#ffff88": "light", "#593b39": "stem" };
    const error = refusal(() => readArtwork(pear, { roles }));
    expect(error).toMatchObject({ code: "missing-role", where: "artwork > roles" });
    expect(error.fix).toContain('"#ff822d": ');
  });

  it("refuses what is no colour at all, with the nearest fill", () => {
    const roles = { "#ff822d": "fruit", "#ffff88": "light", "593b39": "stem" };
    const error = refusal(() => readArtwork(pear, { roles }));
    expect(error).toMatchObject({ code: "unknown-fill", where: "artwork > roles > 593b39" });
    expect(error.fix).toContain('did you mean "#593b39"?');
  });

  it("refuses names that are no roles, options that nobody knows, and sizes out of range", () => {
    const roles = { "#ff822d": "Fruit!", "#ffff88": "light", "#593b39": "stem" };
    expect(refusal(() => readArtwork(pear, { roles }))).toMatchObject({
      code: "wrong-type",
      where: "artwork > roles > #ff822d",
    });
    expect(refusal(() => readArtwork(pear, { heigth: 3 } as object)).code).toBe("unknown-option");
    expect(refusal(() => readArtwork(pear, { size: 0 })).code).toBe("length-range");
    expect(refusal(() => readArtwork(3 as unknown as string)).code).toBe("wrong-type");
  });

  it("refuses more colours than a motif holds, unless they share roles", () => {
    const fills = Array.from({ length: 65 }, (_, i) => `#${(0x101010 + i * 0x010305).toString(16)}`);
    const many = svgOf(
      fills.map((fill, i) => `<rect fill="${fill}" x="${i}" width="1" height="1"/>`).join(""),
    );
    expect(refusal(() => readArtwork(many)).code).toBe("too-many-roles");
    const roles = Object.fromEntries(fills.map((fill, i) => [fill, i % 2 ? "odd" : "even"]));
    expect(drawnBy(readArtwork(many, { roles })).shapes).toHaveLength(2);
  });

  it("comes back from a recipe as it went in", () => {
    const use = readArtwork(pear, {
      size: 25,
      roles: { "#ff822d": "fruit", "#ffff88": "light", "#593b39": "stem" },
    });
    const { use: name, params, ...others } = JSON.parse(JSON.stringify(use));
    expect(name).toBe(artwork.name);
    const again = useMotif(artwork, { ...params, ...others });
    expect(again).toEqual(use);
    expect(drawnBy(again)).toEqual(drawnBy(use));
    expect(useMotif(artwork, { svg: pear, roles: { "#593b39": "orange" } }).roles).toEqual({
      "#ff822d": "orange-2",
      "#ffff88": "pale-yellow",
      "#593b39": "orange",
    });
  });
});

describe("a look into a drawing", () => {
  it("tells its size, its fills and what became of it", () => {
    expect(inspectArtwork(pear, { size: 26 })).toEqual({
      width: 18,
      height: 26,
      fills: [
        { fill: "#ff822d", role: "orange", area: expect.closeTo(Math.PI * 90 * 1.00028, 1) },
        { fill: "#ffff88", role: "pale-yellow", area: 8 },
        { fill: "#593b39", role: "deep-brown", area: 16 },
      ],
      roles: [
        { role: "orange", fill: "#ff822d", parts: ["#ff822d"], area: expect.any(Number) },
        { role: "pale-yellow", fill: "#ffff88", parts: ["#ffff88"], area: 8 },
        { role: "deep-brown", fill: "#593b39", parts: ["#593b39"], area: 16 },
      ],
      shapes: 3,
      nodes: { before: 12, after: 12 },
      dropped: [],
      cut: [],
      warnings: [],
    });
  });

  it("is refused as the drawing itself is", () => {
    expect(refusal(() => inspectArtwork("harbour")).code).toBe("not-svg");
  });
});
