// The page on colours says what holds: its script runs, its names are planned, its sentence is said.
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { rateColorway } from "../../../src/colorway/plan/rating.ts";
import { sayRating } from "../../../src/colorway/plan/say.ts";
import { loadPatterns } from "../../../src/node/load/load-patterns.ts";
import { loadPicks } from "../../../src/node/load/load-picks.ts";
import { buildTile } from "../../../src/tile/build.ts";
import { put, scratch } from "../../node/given.ts";

const page = readFileSync(new URL("../../../docs/colors.md", import.meta.url), "utf8");
const script = /```ts\n(\/\/ shell-walk\.ts\n[\s\S]*?)```/.exec(page)![1]!;
const picks = /```json\n(\{ "colorways"[\s\S]*?)```/.exec(page)![1]!;

test("the script plans, and the picks are among its colorways", async () => {
  const folder = await scratch();
  const file = await put(folder, "shell-walk.ts", script.replace(/^for .*console\.log.*$/m, ""));
  await put(folder, "shell-walk.picks.json", picks);
  const [pattern] = await loadPatterns(file);
  expect(Object.keys(pattern!.colorways)).toHaveLength(8);
  expect(await loadPicks(file, pattern!)).toHaveLength(2);
  for (const name of page.match(/`ferry-[a-z-]+`/g)!)
    expect(Object.keys(pattern!.colorways)).toContain(name.slice(1, -1));
  const shallows = { ground: "#eef3ee", shell: "#9cc5c1", rib: "#2f6f77", rim: "#f4d9b8" };
  const said = sayRating(rateColorway(await buildTile(pattern!), { name: "shallows", inks: shallows }));
  const [printed] = /(?<=^\/\/ )[\d.]+ of 100: .*weakest where(?= …)/m.exec(page)!;
  expect(said).toContain(printed);
});
