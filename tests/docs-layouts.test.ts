// docs/layouts.md: its snippets run, and its pictures are of what they say. To renew them: npm run pictures.
import { readFileSync, statSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import * as sprigwright from "../src/index.ts";
import { patternsOf } from "../tools/layout-snippets.mjs";
import { recipeIn } from "./recipe-in.ts";

const { buildTile, recipeOf } = sprigwright;
const docs = new URL("../docs/", import.meta.url);
const page = readFileSync(new URL("layouts.md", docs), "utf8");
const pictures = [...page.matchAll(/\]\((pictures\/layouts\/([\w-]+)\.png)\)/g)].map(([, file, name]) => ({
  file: new URL(file!, docs),
  name: name!,
}));

let patterns: Map<string, sprigwright.Pattern>;
beforeAll(async () => {
  patterns = new Map((await patternsOf(page, sprigwright)).map((pattern) => [pattern.name, pattern]));
}, 30_000);

describe("docs/layouts.md", () => {
  it("has snippets that run, and a picture of every pattern that they define but the one that is only measured", () => {
    expect([...patterns.keys()].filter((name) => name !== "measured")).toEqual(
      pictures.map(({ name }) => name),
    );
  });

  it("shows pictures of these very patterns, small enough for a page", () => {
    for (const { file, name } of pictures) {
      expect(recipeIn(readFileSync(file)), name).toEqual(
        JSON.parse(JSON.stringify(recipeOf(patterns.get(name)!))),
      );
      expect(statSync(file).size, name).toBeLessThan(120_000);
    }
    expect(pictures.reduce((sum, { file }) => sum + statSync(file).size, 0)).toBeLessThan(1_500_000);
  });

  it.each(["border", "hand-after", "direction-two-way"])("builds %s", async (name) => {
    const tile = await buildTile(patterns.get(name)!);
    expect(tile.placements.length).toBeGreaterThan(20);
  });

  it("lists every figure that a tile has, and no other", async () => {
    const tile = await buildTile(patterns.get("measured")!);
    const section = page.slice(page.indexOf("\n## Figures\n"));
    const rows = section.split("\n").filter((line) => line.startsWith("| `"));
    expect(rows.map((row) => /`(\w+)`/.exec(row)![1])).toEqual(Object.keys(tile.figures));
  });

  it("has headings for all that its contents link to", () => {
    const headings = [...page.matchAll(/^## (.*)$/gm)].map((match) =>
      match[1]!.toLowerCase().replaceAll(" ", "-"),
    );
    for (const [, anchor] of page.matchAll(/\]\(#([\w-]+)\)/g)) expect(headings).toContain(anchor);
  });
});
