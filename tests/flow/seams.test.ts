import { describe, expect, test } from "vitest";
import { movePath } from "../../src/geometry/matrix.ts";
import { buildTile, rasterize, type Tile } from "../../src/index.ts";
import { meadow, repeats } from "./patterns.ts";
import { differing, readPng, rolled } from "./picture.ts";

/** The same tile with everything moved by whole µm, as if it had been cut elsewhere from the cloth. */
const moved = (tile: Tile, dx: number, dy: number): Tile => ({
  ...tile,
  layers: tile.layers.map(({ role, path }) => ({ role, path: movePath(path, dx, dy) })),
});

describe.each(Object.entries(repeats))("a %s repeat", (_, repeat) => {
  const pattern = meadow(repeat, "seams");
  const noon = pattern.colorways["noon"]!;
  const built = buildTile(pattern);
  const picture = async (tile: Tile) => readPng((await rasterize(tile, { dpi: 90 })).png(noon));

  test("shows no seam: moved by half its width and height, it is the rolled picture to the last pixel", async () => {
    const tile = await built;
    const { width, height } = tile.block;
    const whole = await picture(tile);
    const shifted = await picture(moved(tile, width / 2, height / 2));
    expect(differing(shifted, rolled(whole, whole.width / 2, whole.height / 2))).toBe(0);
  });

  test("recurs exactly at both of its lattice vectors", async () => {
    const { lattice, ...tile } = await built;
    const whole = await picture({ lattice, ...tile });
    for (const [x, y] of [lattice.a, lattice.b])
      expect(differing(whole, rolled(whole, (x * 90) / 25_400, (y * 90) / 25_400))).toBe(0);
  });

  test("would be caught with a seam: a layer moved by one pixel differs", async () => {
    const tile = await built;
    const [first, ...rest] = tile.layers;
    const shifted = { ...tile, layers: [{ ...first!, path: movePath(first!.path, 283, 0) }, ...rest] };
    expect(differing(await picture(tile), await picture(shifted))).toBeGreaterThan(100);
  });
});

test("a field of a half-drop shows the same block over and over", async () => {
  const pattern = meadow(repeats["half-drop"]!, "field");
  const tile = await buildTile(pattern);
  const noon = pattern.colorways["noon"]!;
  const field = readPng((await rasterize(tile, { dpi: 45, cut: { across: 2, down: 3 } })).png(noon));
  const block = readPng((await rasterize(tile, { dpi: 45 })).png(noon));
  expect([field.width, field.height]).toEqual([block.width * 2, block.height * 3]);
  expect(differing(field, rolled(field, block.width, 0))).toBe(0);
  expect(differing(field, rolled(field, block.width / 2, block.height / 2))).toBe(0);
});
