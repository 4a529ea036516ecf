import { expect, it } from "vitest";
import { palette } from "../../src/colorway/palette.ts";
import { colorways } from "../../src/colorway/plan/colorways.ts";
import { toSvg } from "../../src/output/svg/to-svg.ts";
import { withColorways } from "../../src/pattern/with-colorways.ts";
import { buildTile } from "../../src/tile/build.ts";
import { recipeOf } from "../../src/tile/recipe.ts";
import { scaleTile } from "../../src/tile/scale.ts";
import { refusal } from "../given.ts";
import { shore } from "../given-patterns.ts";

const sea = palette({
  name: "sea",
  inks: { foam: "#eef3ee", mist: "#bcd3d6", petrol: "#1d5566", buoy: "#e8643c", rope: "#d8b983" },
});

it("a pattern takes planned colorways, for files and recipes alike, and stays the same tile", async () => {
  const tile = await buildTile(shore);
  const planned = colorways(tile, { palettes: [sea], count: 4 });
  const pattern = withColorways(shore, planned);
  expect(Object.keys(pattern.colorways)).toEqual(planned.map(({ name }) => name));
  const again = await buildTile(pattern);
  expect(again.digest).toBe(tile.digest);
  expect(Object.keys(recipeOf(pattern).colorways)).toEqual(planned.map(({ name }) => name));
  const first = planned[0]!;
  expect(toSvg(again, first)).toBe(toSvg(again, pattern.colorways[first.name]!));
  expect(shore.colorways.dawn).toBeDefined();
});

it("of a tile needs no second layout, and is the same to the byte", async () => {
  const tile = await buildTile(shore);
  const planned = colorways(tile, { palettes: [sea], count: 4 });
  const [quick, slow] = [withColorways(tile, planned), withColorways(shore, planned)];
  expect(quick).toEqual(slow);
  const [ready, laid] = [await buildTile(quick), await buildTile(slow)];
  expect(ready.layers).toBe(tile.layers);
  expect(laid.layers).not.toBe(tile.layers);
  expect(ready).toEqual(laid);
  expect(Object.isFrozen(ready.recipe.colorways)).toBe(true);
  // And so on from there.
  const [first] = planned;
  const again = await buildTile(withColorways(ready, [first!]));
  expect([again.layers === tile.layers, Object.keys(again.recipe.colorways)]).toEqual([true, [first!.name]]);
  expect(Object.keys(tile.recipe.colorways)).toEqual(Object.keys(shore.colorways));
});

it("of a tile that was changed since is refused: its pattern is not known", async () => {
  const scaled = scaleTile(await buildTile(shore), 2);
  const error = refusal(() => withColorways(scaled, [shore.colorways.dawn]));
  expect([error.code, error.where]).toEqual(["wrong-type", "withColorways > of"]);
});

it("can be called off where the tile is there already", async () => {
  const tile = await buildTile(shore);
  const pattern = withColorways(tile, [shore.colorways.dawn]);
  const done: number[] = [];
  await buildTile(pattern, { onProgress: (share) => done.push(share) });
  expect(done).toEqual([1]);
  await expect(buildTile(pattern, { signal: AbortSignal.abort("enough") })).rejects.toBe("enough");
});

it("refuses what is no list of colorways for it", () => {
  const { dawn } = shore.colorways;
  const on = (list: unknown) => refusal(() => withColorways(shore, list as never));
  expect(on([]).code).toBe("wrong-type");
  expect(on({ dawn }).code).toBe("wrong-type");
  expect(on([dawn, dawn]).code).toBe("same-name");
  expect(on([{ name: "bare", inks: { ground: "#ffffff" } }]).code).toBe("missing-ink");
  expect(on([{ ...dawn, name: "No Name" }]).code).toBe("wrong-type");
  expect(on([undefined]).code).toBe("wrong-type");
  expect(refusal(() => withColorways({} as never, [dawn as never])).code).toBe("wrong-type");
});
