import polygonClipping, { type MultiPolygon } from "polygon-clipping";
import { describe, expect, it } from "vitest";
import { areaOf } from "../../../src/geometry/path.ts";
import { scallop } from "../../../src/motif/primitives/index.ts";
import { areaOfPolygons, drawn, polygons, shape } from "./measure.ts";

const moved = (all: MultiPolygon, dx: number, dy: number): MultiPolygon =>
  all.map((polygon) => polygon.map((ring) => ring.map(([x, y]) => [x + dx, y + dy])));

describe("scallops set edge to edge", () => {
  it.each([
    [26, 0.48, 8],
    [40, 0.36, 12],
    [20, 0.5, 5],
  ])("of size %d, rise %d, %i ribs touch without overlapping and leave little ground", (size, rise, ribs) => {
    const path = shape(drawn(scallop({ size, rise, ribs })), "scallop");
    const one = polygons(path);
    const row = size * rise;
    const neighbours = [
      [size, 0],
      [size / 2, row],
      [-size / 2, row],
      [0, 2 * row],
    ] as const;
    for (const [dx, dy] of neighbours) {
      const over = areaOfPolygons(polygonClipping.intersection(one, moved(one, dx, dy)));
      expect(over, `${dx}, ${dy}`).toBeLessThan(0.05);
      // Nudged a fifth of a millimetre nearer they would overlap: they do touch.
      const [nx, ny] = [dx * (1 - 0.2 / size), dy * (1 - 0.2 / size)];
      if (dy < 2 * row)
        expect(areaOfPolygons(polygonClipping.intersection(one, moved(one, nx, ny)))).toBeGreaterThan(over);
    }
    expect(areaOf(path) / 1e6 / (size * row)).toBeGreaterThan(0.88);
  });

  it("with as many lobes as ribs and one", () => {
    const lobes = (ribs: number): number => {
      const path = shape(drawn(scallop({ ribs, rim: 0, size: 60 })), "scallop");
      // Each lobe is a local peak of the distance from the middle; the hinge and the rest are alike for both.
      const all = polygons(path)[0]![0]!.map(([x, y]) => Math.hypot(x, y));
      const n = all.length;
      return all.filter((d, i) => d > all[(i + 1) % n]! && d >= all[(i + n - 1) % n]!).length;
    };
    expect(lobes(9) - lobes(6)).toBe(3);
  });
});
