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

  it("may be dashed, from any place on, its lengths repeated when they are odd", () => {
    const dashed = (dash: string): number =>
      areas(`<line x1="10" y1="50" x2="70" y2="50" ${line} ${dash}/>`)[0]!;
    expect(dashed('stroke-dasharray="10"')).toBeCloseTo(300, 1);
    expect(dashed('stroke-dasharray="20 10"')).toBeCloseTo(400, 1);
    expect(dashed('stroke-dasharray="20,10" stroke-dashoffset="10"')).toBeCloseTo(400, 1);
    expect(dashed('stroke-dasharray="20 10" stroke-dashoffset="-10"')).toBeCloseTo(400, 1);
    expect(dashed('stroke-dasharray="5 15 10"')).toBeCloseTo(10 * (5 + 10 + 15), 1);
    expect(dashed('stroke-dasharray="1 1" pathLength="6"')).toBeCloseTo(300, 1);
    expect(dashed('stroke-dasharray="none"')).toBeCloseTo(600, 1);
    expect(dashed('stroke-dasharray="0 0"')).toBeCloseTo(600, 1);
    expect(dashed('stroke-dasharray="0 20" stroke-linecap="round"') / (3 * 25 * Math.PI)).toBeCloseTo(1, 2);
  });

  it("keeps a dash in one piece that runs over the start of a closed line", () => {
    const ring = `<rect x="20" y="20" width="40" height="40" ${line} stroke-dasharray="20" stroke-dashoffset="10"/>`;
    const { path } = readDrawing(svgOf(`<rect width="100" height="100"/>${ring}`, 100), 100).areas[1]!;
    expect(path.contours).toHaveLength(4);
    expect(areaOf(path) / 1e6).toBeCloseTo(800, 1); // four bent dashes, each as much over as within
  });

  it("is drawn under its fill where paint-order says so", () => {
    const body =
      '<rect x="20" y="20" width="40" height="40" fill="blue" stroke="red" stroke-width="10" paint-order="stroke"/>';
    const { areas: seen } = readDrawing(svgOf(body, 100), 100);
    expect(seen.map((area) => area.fill)).toEqual(["#ff0000", "#0000ff"]);
  });

  it("keeps its width on the page where it does not scale", () => {
    const body = `<line x1="2" y1="5" x2="6" y2="5" transform="scale(10)" vector-effect="non-scaling-stroke" ${line}/>`;
    expect(areas(body)[0]).toBeCloseTo(400, 1);
  });

  it("has curves where the line has: no polygon of hundreds of sides", () => {
    const { path } = readDrawing(svgOf('<circle r="20" fill="none" stroke="red" stroke-width="3"/>'), 30)
      .areas[0]!;
    expect(path.points.length / 6).toBeLessThan(60);
  });

  it("looks as resvg draws it, dashed", () => {
    const lines = ["butt", "round", "square"].map(
      (cap, i) =>
        `<path fill="none" stroke="#235" stroke-width="2" stroke-linecap="${cap}" stroke-dasharray="3 3.4 1" stroke-dashoffset="1.2" d="M3 ${5 + 9 * i}c8-6 14 8 25 2v4H4z"/>`,
    );
    const ground = '<rect width="32" height="32" fill="#eee"/>';
    expect(likeness(svgOf(ground + lines.join("")), redrawn(svgOf(lines.join("")), ground))).toBeGreaterThan(
      36,
    );
  });
});
