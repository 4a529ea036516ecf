import { describe, expect, it } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import { readDrawing } from "../../../src/motif/artwork/read.ts";
import { likeness, redrawn, svgOf } from "./picture.ts";

/** Areas in squared units of the file: everything is measured against a page that is drawn too. */
const areas = (body: string): number[] =>
  readDrawing(svgOf(`<rect width="100" height="100"/>${body}`, 100), 100)
    .areas.slice(1)
    .map((area) => areaOf(area.path) / 1e6);
const line = 'fill="none" stroke="red" stroke-width="10"';

describe("a stroke", () => {
  it("becomes the area that it covers", () => {
    expect(areas(`<line x1="20" y1="50" x2="60" y2="50" ${line}/>`)[0]).toBeCloseTo(400, 2);
    expect(areas(`<line x1="20" y1="50" x2="60" y2="50" stroke-linecap="square" ${line}/>`)[0]).toBeCloseTo(
      500,
      2,
    );
    const round = areas(`<line x1="20" y1="50" x2="60" y2="50" stroke-linecap="round" ${line}/>`)[0]!;
    expect(round / (400 + 25 * Math.PI)).toBeCloseTo(1, 3);
    const ring = areas(`<circle cx="50" cy="50" r="20" ${line}/>`)[0]!;
    expect(ring / (Math.PI * (25 * 25 - 15 * 15))).toBeCloseTo(1, 3);
    expect(areas(`<rect x="20" y="20" width="40" height="40" ${line}/>`)[0]).toBeCloseTo(
      50 * 50 - 30 * 30,
      2,
    );
    const bevel = areas(`<rect x="20" y="20" width="40" height="40" stroke-linejoin="bevel" ${line}/>`)[0];
    expect(bevel).toBeCloseTo(50 * 50 - 30 * 30 - 4 * 12.5, 2);
  });

  it("lies over its fill, and is scaled with its element", () => {
    const body =
      '<rect x="2" y="2" width="4" height="4" fill="blue" stroke="red" stroke-width="1" transform="scale(10)"/>';
    expect(areas(body).map(Math.round)).toEqual([1600, 2500 - 900]);
  });

  it("tells open from closed where a line comes back to its start", () => {
    const open = areas(`<path d="M20 20H60V60H20V20" ${line}/>`)[0]!;
    expect(open).toBeCloseTo(50 * 50 - 30 * 30 - 25, 2); // the corner where it starts is not joined
  });

  it("looks as resvg draws it", () => {
    const lines = ["butt", "round", "square"].flatMap((cap, i) =>
      ["miter", "round", "bevel"].map(
        (join, j) =>
          `<path fill="none" stroke="#${"37b"[i]}${"37b"[j]}8" stroke-width="2.5" stroke-linecap="${cap}" stroke-linejoin="${join}" d="M${2 + 10 * i} ${8 + 9 * j}c1-6 4-6 4-1l3-5"/>`,
      ),
    );
    const ground = '<rect width="32" height="32" fill="#eee"/>';
    const given = svgOf(ground + lines.join(""));
    expect(likeness(given, redrawn(svgOf(lines.join("")), ground))).toBeGreaterThan(40);
  });
});
