import { expect, it } from "vitest";
import { imagesOf } from "../../src/geometry/images.ts";
import { framed, inRegion, type Region } from "../../src/geometry/region.ts";

const diamond: Region = [
  [6, 0],
  [12, 4],
  [6, 8],
  [0, 4],
];
const rectangle: Region = [
  [0, 0],
  [12, 0],
  [12, 8],
  [0, 8],
];

it("every point is in just one of the copies of a region that its lattice lays side by side", () => {
  for (const [region, a, b] of [
    [diamond, [6, 4], [-6, 4]],
    [rectangle, [12, 0], [0, 8]],
  ] as const)
    for (let x = 0; x < 12; x++)
      for (let y = 0; y < 8; y++) {
        let count = 0;
        for (let i = -4; i <= 4; i++)
          for (let j = -4; j <= 4; j++)
            if (inRegion(region, x + i * a[0] + j * b[0], y + i * a[1] + j * b[1])) count++;
        expect(count, `${x}, ${y}`).toBe(1);
      }
});

it("with slack, what lies a little outside counts too", () => {
  expect(inRegion(rectangle, 12, 3)).toBe(false);
  expect(inRegion(rectangle, 12.9, 3, 1)).toBe(true);
  expect(inRegion(rectangle, 13.1, 3, 1)).toBe(false);
});

it("a frame starts at the origin, and its corners run clockwise", () => {
  const { region, unit, left, top } = framed([
    [-3.5, 2],
    [-3.5, 7],
    [4, 2],
  ]);
  expect({ unit, left, top }).toEqual({ unit: { width: 8, height: 5 }, left: -4, top: 2 });
  expect(region).toEqual([
    [8, 0],
    [0.5, 5],
    [0.5, 0],
  ]);
  expect(inRegion(region, 2, 1)).toBe(true);
  expect(inRegion(region, 7, 4)).toBe(false);
});

it("home is found in a region that is wider than the block", () => {
  const images = imagesOf({
    unit: { width: 20, height: 10 },
    region: [
      [0, 0],
      [10, 0],
      [20, 10],
      [10, 10],
    ],
    lattice: { a: [10, 0], b: [0, 10], block: { width: 10, height: 10 } },
    operations: [[1, 0, 0, 1, 0, 0]],
  });
  for (let x = -15; x < 15; x++)
    for (let y = -15; y < 15; y++) {
      const [dx, dy] = images.home(x, y)!;
      expect(dx % 10 === 0 && dy % 10 === 0).toBe(true);
      expect(x + dx >= y + dy && x + dx < y + dy + 10).toBe(true);
    }
});
