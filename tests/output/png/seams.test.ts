import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { movePath, reversePath } from "../../../src/geometry/matrix.ts";
import { joinPaths, type Path } from "../../../src/geometry/path.ts";
import type { Tile } from "../../../src/tile/tile.ts";
import { differing, moved, picture, rolled } from "./pictures.ts";
import { blob, chance, circle, meadow, rectangle, tileOf } from "./tiles.ts";

/** Three layers strewn over a block: round, thin, across edges and corners, larger than the block, holed. */
function strewn(seed: number, width: number, height: number): Tile {
  const random = chance(seed);
  const size = Math.min(width, height);
  const layer = (shapes: number, least: number, most: number, flat: number): Path =>
    joinPaths(
      Array.from({ length: shapes }, () =>
        blob(random, random() * width, random() * height, size * (least + (most - least) * random()), flat),
      ),
    );
  const ring = [circle(0, 0, size * 0.2), reversePath(circle(size * 0.03, 0, size * 0.12))];
  return tileOf({ width, height }, [
    {
      role: "wide",
      path: joinPaths([blob(random, random() * width, 0, size * 0.9, 0.3), layer(3, 0.1, 0.2, 1)]),
    },
    { role: "thin", path: layer(6, 0.1, 0.6, 0.02) },
    { role: "ring", path: joinPaths([...ring, layer(5, 0.01, 0.1, 0.6)]) },
  ]);
}

describe("the seam", () => {
  it("is not there: a tile moved by half a block is the same picture, rolled, to the pixel", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 1e6 }),
        fc.integer({ min: 8, max: 90 }).map((n) => n * 2),
        async (seed, width) => {
          // 1 x 0.75: half of either is whole pixels when the width is a multiple of 8.
          const across = width - (width % 8);
          const tile = strewn(seed, 160_000, 120_000);
          const still = await picture(tile, across);
          const half = await picture(moved(tile, 80_000, 60_000), across);
          expect(differing(half, rolled(still, across / 2, (across * 3) / 8))).toBe(0);
        },
      ),
      { seed: 11, numRuns: 25 },
    );
  });

  it("is not there for any whole number of pixels, in pictures of odd size", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 1e6 }),
        fc.integer({ min: -300, max: 300 }),
        fc.integer({ min: -300, max: 300 }),
        async (seed, dx, dy) => {
          const tile = strewn(seed, 101_000, 77_000); // 101 x 77 pixels of 1 mm
          const still = await picture(tile, 101);
          const shifted = await picture(moved(tile, dx * 1000, dy * 1000), 101);
          expect(differing(shifted, rolled(still, dx, dy))).toBe(0);
        },
      ),
      { seed: 12, numRuns: 25 },
    );
  });

  it("is not there for a half-drop, whose block holds every shape twice", async () => {
    const unit = strewn(5, 101_000, 140_000);
    const block = { width: 202_000, height: 140_000 };
    const twice = (path: Path): Path => joinPaths([path, movePath(path, 101_000, 70_000)]);
    const tile = tileOf(
      block,
      unit.layers.map(({ role, path }) => ({ role, path: twice(path) })),
    );
    const still = await picture(tile, 202);
    expect(differing(still, rolled(still, 101, 70))).toBe(0);
  });

  it("does not depend on which copy of a contour the tile keeps", async () => {
    const tile = strewn(7, 100_000, 80_000);
    const random = chance(3);
    const scattered = tile.layers.map(({ role, path }) => {
      let from = 0;
      const contours = path.contours.map((curves) => {
        const points = path.points.slice(from, from + curves * 6);
        from += curves * 6;
        const by = [Math.floor(random() * 7) - 3, Math.floor(random() * 7) - 3] as const;
        return movePath({ points, contours: [curves] }, by[0] * 100_000, by[1] * 80_000);
      });
      return { role, path: joinPaths(contours) };
    });
    const still = await picture(tile, 203);
    expect(differing(await picture({ ...tile, layers: scattered }, 203), still)).toBe(0);
  });

  it("shows, when one shape of a meadow is a pixel out of place", async () => {
    const tile = meadow(90_000, 4, 2);
    const still = await picture(tile, 180);
    const leaf = tile.layers[1]!.path;
    const points = leaf.points.slice();
    for (let i = 0; i < leaf.contours[0]! * 6; i += 2) points[i]! += 500; // a pixel is 500 µm
    const layers = tile.layers.map((layer, i) => (i === 1 ? { ...layer, path: { ...leaf, points } } : layer));
    expect(differing(await picture({ ...tile, layers }, 180), still)).toBeGreaterThan(4);
  });

  it("closes where two shapes share a side across the block's edge", async () => {
    const halves = joinPaths([
      rectangle(10_333, 5000, 70_000, 60_000),
      rectangle(80_333, 5000, 30_000, 60_000),
    ]);
    const tile = tileOf({ width: 100_000, height: 60_000 }, [{ role: "half", path: halves }]);
    const { data, width } = await picture(tile, 150);
    // All rows alike, and only the two outer sides, both in one pixel of 667 µm or apart, are mixed.
    const colors = new Set(
      Array.from({ length: data.length / 4 }, (_, i) => data.subarray(i * 4, i * 4 + 3).join()),
    );
    expect(width).toBe(150);
    expect(colors.size).toBe(1);
  });
});
