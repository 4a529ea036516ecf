import { expect, test } from "vitest";
import { buildTile, colorwayFor, rasterize, toSvg } from "../../src/index.ts";
import { meadow, repeats } from "../flow/patterns.ts";

const pattern = meadow(repeats["straight"]!, "recolour");
const built = buildTile(pattern);
const noon = pattern.colorways["noon"]!.inks;

test("a finished tile takes another colorway without being built again", async () => {
  const tile = await built;
  const dusk = colorwayFor(tile, "dusk", { ...noon, ground: "midnightblue" });
  expect(dusk).toEqual({ name: "dusk", inks: { ...noon, ground: "#191970" } });
  expect(toSvg(tile, dusk)).toContain('<rect id="ground" fill="#191970"');
});

test("it is held to the tile's roles", async () => {
  const tile = await built;
  const { ring: _, ...less } = noon as Record<string, string>;
  expect(() => colorwayFor(tile, "dusk", less)).toThrow(/no ink for "ring"/);
  expect(() => colorwayFor(tile, "dusk", { ...noon, rung: "#fff" })).toThrow(/did you mean "ring"/);
});

test("what is no tile or no colorway is refused in words", async () => {
  const tile = await built;
  expect(() => toSvg(tile, noon as never)).toThrow(/meadow > colorway: .*colorwayFor\(tile, name, inks\)/);
  expect(() => toSvg(tile, undefined as never)).toThrow(/is not a colorway/);
  expect(() => toSvg(built as never, pattern.colorways["noon"]!)).toThrow(/await buildTile\(pattern\)/);
  await expect(rasterize(pattern as never, { dpi: 90 })).rejects.toThrow(/is not a tile/);
  await expect(buildTile(undefined as never)).rejects.toThrow(/is not a pattern/);
});
