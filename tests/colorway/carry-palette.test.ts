import { beforeAll, describe, expect, it } from "vitest";
import { carryPalette } from "../../src/colorway/carry-palette.ts";
import { palette } from "../../src/colorway/palette.ts";
import { set } from "../../src/layout/set.ts";
import type { MotifUse } from "../../src/motif/motif.ts";
import { dot, leaf } from "../../src/motif/primitives/index.ts";
import { toSvg } from "../../src/output/svg/to-svg.ts";
import { readPattern } from "../../src/pattern/pattern.ts";
import { straight } from "../../src/repeat/straight.ts";
import { buildTile } from "../../src/tile/build.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { refusal } from "../given.ts";

const quay = palette({ name: "quay", inks: { chalk: "#f6ead7", kelp: "#3f6b4f", buoy: "#d9803c" } });

let hero: Tile;
let blender: Tile;
beforeAll(async () => {
  const tile = (name: string, motif: MotifUse, ...roles: string[]): Promise<Tile> =>
    buildTile(
      readPattern({
        ...{ name, seed: "1", repeat: straight({ width: 20, height: 20 }) },
        layout: set({ motifs: [motif], columns: 1, rows: 1 }),
        colorways: { plain: Object.fromEntries(["ground", ...roles].map((role) => [role, "#fff"])) },
      }),
    );
  hero = await tile("leaves", leaf({ length: 12 }), "blade", "vein");
  blender = await tile("dots", dot({ size: 4, roles: { dot: "kelp" } }), "kelp");
});

describe("one palette over a collection", () => {
  it("gives each pattern a colorway, with one ink for a role and one ground for all", () => {
    const [first, second] = carryPalette({
      palette: quay,
      tiles: [hero, blender],
      roles: { ground: "chalk", blade: "kelp", vein: "buoy" },
    });
    expect(first).toEqual({ name: "quay", inks: { ground: "#f6ead7", blade: "#3f6b4f", vein: "#d9803c" } });
    // Its only role is called as an ink is.
    expect(second).toEqual({ name: "quay", inks: { ground: "#f6ead7", kelp: "#3f6b4f" } });
    expect(toSvg(blender, second!)).toContain("#3f6b4f");
  });

  it("carries a colorway of one pattern on to the others", () => {
    const best = {
      name: "dawn",
      inks: { ground: "#f6ead7", blade: "#3f6b4f", vein: "#d9803c", kelp: "#224433" },
    };
    expect(carryPalette({ palette: best, tiles: [hero, blender] })).toEqual([
      { name: "dawn", inks: { ground: "#f6ead7", blade: "#3f6b4f", vein: "#d9803c" } },
      { name: "dawn", inks: { ground: "#f6ead7", kelp: "#224433" } },
    ]);
  });

  const call = (more: object): string =>
    refusal(() =>
      carryPalette({ palette: quay, tiles: [hero, blender], roles: { ground: "chalk" }, ...more } as never),
    ).message;

  it("names the pattern and the roles that are left without an ink", () => {
    expect(call({})).toContain('carryPalette > leaves: no ink for "blade", "vein"');
    expect(call({ roles: {} })).toContain('no ink for "ground", "blade", "vein"');
  });

  it("refuses roles that no pattern has, inks that the palette lacks, and what is no tile", () => {
    expect(call({ roles: { ground: "chalk", blad: "kelp" } })).toContain('did you mean "blade"');
    expect(call({ roles: { ground: "chlk" } })).toContain('there is no ink "chlk"');
    expect(call({ tiles: [hero, {}] })).toContain("tiles[1]");
    expect(call({ tiles: hero })).toContain("a list of tiles");
    expect(call({ name: "Quay", roles: { ground: "chalk", blade: "kelp", vein: "buoy" } })).toContain(
      "[wrong-type]",
    );
    expect(call({ nme: "x" })).toContain('did you mean "name"');
  });

  it("knows the palette's inks in the types", () => {
    const bad = (): unknown =>
      // @ts-expect-error there is no ink "slate"
      carryPalette({ palette: quay, tiles: [blender], roles: { ground: "slate" } });
    expect(refusal(bad).code).toBe("unknown-ink");
  });
});
