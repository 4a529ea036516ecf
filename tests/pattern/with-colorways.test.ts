import { expect, it } from "vitest";
import { palette } from "../../src/colorway/palette.ts";
import { colorways } from "../../src/colorway/plan/colorways.ts";
import { toSvg } from "../../src/output/svg/to-svg.ts";
import { withColorways } from "../../src/pattern/with-colorways.ts";
import { buildTile } from "../../src/tile/build.ts";
import { recipeOf } from "../../src/tile/recipe.ts";
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
