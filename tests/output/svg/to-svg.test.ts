import { DOMParser } from "@xmldom/xmldom";
import { SVGPathData } from "svg-pathdata";
import { describe, expect, it } from "vitest";
import type { Colorway } from "../../../src/colorway/colorway.ts";
import { movePath } from "../../../src/geometry/matrix.ts";
import { mm, pathData } from "../../../src/geometry/path-text.ts";
import { ellipse } from "../../../src/geometry/shapes.ts";
import { toSvg } from "../../../src/output/svg/to-svg.ts";
import { buildTile } from "../../../src/tile/build.ts";
import { polygon, refusal } from "../../given.ts";
import { shore } from "../../given-patterns.ts";

describe("lengths in SVG", () => {
  it.each([
    [0, "0"],
    [1, "0.001"],
    [-1, "-0.001"],
    [25_400, "25.4"],
    [-12_050, "-12.05"],
    [1_000_000, "1000"],
    [-100, "-0.1"],
  ])("%i µm are %s mm", (um, text) => {
    expect(mm(um)).toBe(text);
  });
});

describe("path data", () => {
  it("is short for straight sides and exact for curves", () => {
    expect(pathData(polygon(0, 0, 1.5, 0, 1.5, -2))).toBe("M0 0L1.5 0L1.5 -2Z");
    expect(pathData(ellipse(0, 0, 1))).toMatch(/^M0 -1C0\.552 -1 1 -0\.552 1 0C/);
  });

  // svg-pathdata reads the grammar of SVG 1.1, 8.3: a reader that shares no code with the writer.
  it("reads back by another reader as the same micrometres", () => {
    const path = movePath(ellipse(3, 4, 10.123, 5.001), -7001, 12_345);
    const { commands } = new SVGPathData(pathData(path));
    const read = commands.flatMap((c) => {
      if (c.type === SVGPathData.MOVE_TO) return [c.x, c.y];
      if (c.type === SVGPathData.CURVE_TO) return [c.x1, c.y1, c.x2, c.y2, c.x, c.y];
      return [];
    });
    expect(read.slice(0, -2).map((v) => Math.round(v * 1000))).toEqual([...path.points]);
    expect(read.slice(-2)).toEqual(read.slice(0, 2));
  });
});

describe("toSvg", () => {
  it("is well-formed, at true size in mm, with exactly one path for each role", async () => {
    const tile = await buildTile(shore);
    const svg = toSvg(tile, shore.colorways.dawn);
    const root = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement!;
    expect(root.getAttribute("viewBox")).toBe("0 0 120 40");
    expect(root.getAttribute("width")).toBe("120mm");
    expect(root.getAttribute("height")).toBe("40mm");
    const paths = [...Array.from(root.getElementsByTagName("path"))];
    expect(paths.map((p) => [p.getAttribute("id"), p.getAttribute("fill")])).toEqual([
      ["float", "#c8553d"],
      ["flag", "#28536b"],
      ["pebble", "#7d8a6a"],
    ]);
    const ground = root.getElementsByTagName("rect")[0]!;
    expect([ground.getAttribute("id"), ground.getAttribute("fill")]).toEqual(["ground", "#f6ead7"]);
    expect(svg).toContain(tile.digest);
  });

  it("needs an ink #rrggbb for every role, the ground included", async () => {
    const tile = await buildTile(shore);
    const bare = {
      name: "bare",
      inks: { float: "#c8553d", flag: "tomato", pebble: "#7d8a6a" },
    } as unknown as Colorway;
    expect(refusal(() => toSvg(tile, bare)).message).toBe(
      'shore > colorway bare: no ink for "ground", "flag"\n' +
        "  fix: give every role that the pattern draws a colour, the ground included [missing-ink]",
    );
  });

  it("stays well-formed whatever a colorway made by hand is called", async () => {
    const tile = await buildTile(shore);
    const svg = toSvg(tile, { ...shore.colorways.dawn, name: "<b>&\"'</title>" });
    const root = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement!;
    expect(root.getElementsByTagName("title")[0]!.textContent).toBe("shore, <b>&\"'</title>");
  });
});
