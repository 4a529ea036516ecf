// docs/layouts.md: its snippets run, and its pictures are of what they say. To renew them: npm run pictures.
import { readFileSync, statSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import * as sprigwright from "../src/index.ts";
import { patternsOf } from "../tools/layout-snippets.mjs";
import { recipeIn } from "./recipe-in.ts";

const docs = new URL("../docs/", import.meta.url);
const page = readFileSync(new URL("layouts.md", docs), "utf8");
const pictures = [...page.matchAll(/\]\((pictures\/layouts\/([\w-]+)\.png)\)/g)].map(([, file, name]) => ({
  file: new URL(file!, docs),
  name: name!,
}));

let patterns: Map<string, sprigwright.Pattern>;
/** Tiles that the snippets themselves build. */
const built = new Map<string, sprigwright.Tile>();
beforeAll(async () => {
  const buildTile = async (pattern: sprigwright.Pattern): Promise<sprigwright.Tile> => {
    const tile = await sprigwright.buildTile(pattern);
    built.set(pattern.name, tile);
    return tile;
  };
  const all = await patternsOf(page, { ...sprigwright, buildTile });
  patterns = new Map(all.map((pattern) => [pattern.name, pattern]));
}, 60_000);

/** A recipe as JSON, without the places that a snippet takes over from a tile: those follow the packing. */
const withoutHolds = (recipe: unknown): unknown =>
  JSON.parse(
    JSON.stringify(recipe, (_, value) =>
      Array.isArray(value) ? value.filter((entry) => entry?.do !== "hold") : value,
    ),
  );

describe("docs/layouts.md", () => {
  it("has snippets that run, and a picture of every pattern that they define but the one that is only measured", () => {
    expect([...patterns.keys()].filter((name) => name !== "measured")).toEqual(
      pictures.map(({ name }) => name),
    );
  });

  it.each(pictures)("shows a picture of that very pattern: $name", ({ file, name }) => {
    const recipe = sprigwright.recipeOf(patterns.get(name)!);
    expect(withoutHolds(recipeIn(readFileSync(file)))).toEqual(withoutHolds(recipe));
    expect(statSync(file).size).toBeLessThan(120_000);
  });

  it("shows pictures that are small enough for a page", () => {
    expect(pictures.reduce((sum, { file }) => sum + statSync(file).size, 0)).toBeLessThan(1_500_000);
  });

  it("builds layers and regions in a border", async () => {
    const tile = await sprigwright.buildTile(patterns.get("border")!);
    expect(tile.placements.some(({ id }) => id.startsWith("1:"))).toBe(true);
    expect(tile.placements.some(({ id }) => id.startsWith("2:"))).toBe(true);
  });

  it("tidies by hand as it says: the gap holds, and no hole is torn", async () => {
    const { findings } = sprigwright.inspect(await sprigwright.buildTile(patterns.get("hand-after")!));
    expect([...new Set(findings.map(({ rule }) => rule))]).toEqual(["whole-pixels"]);
  });

  it("lists every figure that a tile has, and no other", () => {
    const section = page.slice(page.indexOf("\n## Figures\n"));
    const rows = section.split("\n").filter((line) => line.startsWith("| `"));
    expect(rows.map((row) => /`(\w+)`/.exec(row)![1])).toEqual(Object.keys(built.get("measured")!.figures));
  });

  it("has headings for all that its contents link to", () => {
    const headings = [...page.matchAll(/^## (.*)$/gm)].map((match) =>
      match[1]!.toLowerCase().replaceAll(" ", "-"),
    );
    for (const [, anchor] of page.matchAll(/\]\(#([\w-]+)\)/g)) expect(headings).toContain(anchor);
  });
});
