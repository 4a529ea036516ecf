import { describe, expect, it } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import { readDrawing } from "../../../src/motif/artwork/read.ts";
import { svgOf } from "./picture.ts";

/** Area in mm² of the first fill of a body, drawn at a size of 20 mm. */
const area = (body: string): number => areaOf(readDrawing(svgOf(body, 100), 20).areas[0]!.path) / 1e6;
const size = (body: string): number[] => {
  const { width, height } = readDrawing(svgOf(body, 100), 20);
  return [width, height];
};
/** A circle of four cubics is too large by 2.8e-4 of its area (Green's theorem); whole µm leave 1e-5 of doubt. */
const ROUND = 1 + 2.8e-4;

describe("a shape of a drawing", () => {
  it("has its area in closed form", () => {
    expect(area('<rect x="3" y="4" width="40" height="10"/>')).toBeCloseTo(20 * 5, 6);
    expect(area('<circle cx="50" cy="50" r="7"/>') / (Math.PI * 100 * ROUND)).toBeCloseTo(1, 4);
    expect(area('<ellipse cx="50" cy="50" rx="20" ry="5"/>') / (Math.PI * 10 * 2.5 * ROUND)).toBeCloseTo(
      1,
      4,
    );
    expect(area('<polygon points="0,0 40,0 0,40"/>')).toBeCloseTo(200, 6);
    expect(area('<polyline points="0 0 40 0 40 40"/>')).toBeCloseTo(200, 6);
    const corners = (4 - Math.PI * ROUND) * 4;
    expect(area('<rect width="40" height="20" rx="4"/>')).toBeCloseTo(200 - corners, 2);
    expect(area('<rect width="40" height="20" rx="400"/>')).toBeCloseTo(Math.PI * 50 * ROUND, 2);
  });

  it("keeps its curves: a circle stays four", () => {
    const { path } = readDrawing(svgOf('<circle r="7"/>'), 20).areas[0]!;
    expect(path.contours).toEqual([4]);
  });

  it("is centred on the origin, its longer side as long as was asked for", () => {
    const { areas, width, height } = readDrawing(
      svgOf('<rect x="70" y="8" width="10" height="40"/>', 100),
      20,
    );
    expect([width, height]).toEqual([5, 20]);
    expect([...areas[0]!.path.points.slice(0, 2)]).toEqual([-2500, -10000]);
  });

  it("is measured by its curve, not by its controls", () => {
    expect(size('<path d="M0 0C0 40 40 40 40 0z"/>')).toEqual([20, 15]);
  });

  it("fills even-odd where it says so, and nonzero otherwise", () => {
    const ring = "M0 0h40v40h-40zM10 10h20v20h-20z";
    expect(area(`<path d="${ring}"/>`)).toBeCloseTo(400, 6);
    expect(area(`<path fill-rule="evenodd" d="${ring}"/>`)).toBeCloseTo(300, 6);
    expect(area(`<g style="fill-rule:evenodd"><path d="${ring}"/></g>`)).toBeCloseTo(300, 6);
    const crossing = "M0 0h30v40h-30zM10 0h30v40h-30z";
    expect(area(`<path fill-rule="evenodd" d="${crossing}"/>`)).toBeCloseTo(200, 6);
    expect(area(`<path d="${crossing}"/>`)).toBeCloseTo(400, 6);
    const round = `${circle(20)}${circle(10)}`;
    expect(area(`<path fill-rule="evenodd" d="${round}"/>`) / (Math.PI * 75 * ROUND)).toBeCloseTo(1, 4);
  });

  // Held against the same outline without the detour; see also tests/geometry/spikes.test.ts.
  it("keeps its corners when a side runs back along itself", () => {
    const spiked = "M24 6.6 5 27.8v1.5a.75.75 0 0 0 .75.75h1.5H5.75h20.5V7.2z";
    const plain = "M24 6.6 5 27.8v1.5a.75.75 0 0 0 .75.75h20.5V7.2z";
    expect(area(`<path d="${spiked}"/>`)).toBeCloseTo(area(`<path d="${plain}"/>`), 3);
  });

  it("may be moved, turned, scaled and slanted", () => {
    const rect = (transform: string): string => `<rect width="20" height="10" transform="${transform}"/>`;
    expect(size(rect("rotate(90)"))).toEqual([10, 20]);
    expect(size(rect("scale(1 4)"))).toEqual([10, 20]);
    expect(size(rect("skewX(45)"))).toEqual([20, 6.667]);
    expect(size(`<g transform="scale(1 2)">${rect("rotate(90)")}</g>`)).toEqual([5, 20]);
    expect(area(rect("matrix(-1 0 0 1 50 0)"))).toBeCloseTo(200, 6);
  });

  it("may come through use, symbol and nested pages", () => {
    const shared = '<defs><rect id="r" width="10" height="20"/></defs>';
    expect(size(`${shared}<use href="#r"/><use href="#r" x="30"/>`)).toEqual([20, 10]);
    expect(size(`${shared}<use xlink:href="#r" xmlns:xlink="http://www.w3.org/1999/xlink"/>`)).toEqual([
      10, 20,
    ]);
    const symbol = '<symbol id="s" viewBox="0 0 4 4"><rect width="4" height="2"/></symbol>';
    expect(size(`${symbol}<use href="#s" width="40" height="40"/><rect width="1" height="40"/>`)).toEqual([
      20, 20,
    ]);
    const page = '<svg x="10" width="20" height="20" viewBox="0 0 2 2"><rect width="2" height="1"/></svg>';
    expect(size(`${page}<rect width="1" height="1"/>`)).toEqual(
      [20, 20 / 3].map((v) => Math.round(v * 1000) / 1000),
    );
    expect(size('<rect width="50%" height="25%"/>')).toEqual([20, 10]);
  });
});

const circle = (r: number): string => `M${50 - r} 50a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
