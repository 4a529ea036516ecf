import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { movePath } from "../../src/geometry/matrix.ts";
import { joinPaths } from "../../src/geometry/path.ts";
import { copiesInBlock } from "../../src/output/copies.ts";
import { circle, rectangle } from "./png/tiles.ts";

const block = { width: 100_000, height: 60_000 };
const corners = (path: ReturnType<typeof copiesInBlock>): string[] => {
  let at = 0;
  return path.contours.map((curves) => {
    const corner = `${path.points[at]},${path.points[at + 1]}`;
    at += curves * 6;
    return corner;
  });
};

describe("the copies of a path in its block", () => {
  it("are the path itself where it lies inside, touching the edges at the most", () => {
    const path = joinPaths([circle(50_000, 30_000, 9000), rectangle(0, 0, 100_000, 60_000)]);
    expect(copiesInBlock(path, block)).toEqual(path);
  });

  it("are two across an edge and four across a corner, the contour itself first", () => {
    expect(corners(copiesInBlock(rectangle(90_000, 10_000, 20_000, 9000), block))).toEqual([
      "90000,10000",
      "-10000,10000",
    ]);
    expect(corners(copiesInBlock(rectangle(90_000, 50_000, 20_000, 20_000), block))).toEqual([
      "90000,50000",
      "-10000,50000",
      "90000,-10000",
      "-10000,-10000",
    ]);
  });

  it("are as many as a contour larger than the block needs", () => {
    expect(copiesInBlock(rectangle(-150_000, 10_000, 400_000, 9000), block).contours.length).toBe(5);
  });

  it("are made for a hole of its own, wherever it reaches in", () => {
    const holed = joinPaths([
      rectangle(80_000, 10_000, 40_000, 30_000),
      rectangle(85_000, 15_000, 5000, 5000),
    ]);
    expect(copiesInBlock(holed, block).contours.length).toBe(3);
  });

  it("cover every point of the block as often as the endless pattern does", () => {
    const place = fc.integer({ min: -250_000, max: 250_000 });
    const size = fc.integer({ min: 1, max: 260_000 });
    fc.assert(
      fc.property(place, place, size, size, fc.nat(99_999), fc.nat(59_999), (x, y, w, h, px, py) => {
        const { points, contours } = copiesInBlock(rectangle(x, y, w, h), block);
        let here = 0;
        for (let i = 0; i < contours.length * 24; i += 24) {
          const [u, v] = [points[i]!, points[i + 1]!];
          if (px >= u && px < u + w && py >= v && py < v + h) here++;
        }
        const times = (p: number, from: number, length: number, period: number): number =>
          Math.floor((p - from) / period) - Math.floor((p - from - length) / period);
        expect(here).toBe(times(px, x, w, block.width) * times(py, y, h, block.height));
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it("do not depend on which copy is given, but for their order", () => {
    const path = circle(97_000, 58_000, 12_345);
    const far = copiesInBlock(movePath(path, 300_000, -120_000), block);
    expect(corners(far).sort()).toEqual(corners(copiesInBlock(path, block)).sort());
  });
});
