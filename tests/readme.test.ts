import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import * as sprigwright from "../src/index.ts";
import { loadPatterns } from "../src/node.ts";

const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
const command = readFileSync(new URL("../docs/command.md", import.meta.url), "utf8");
const script = /```ts\n([\s\S]*?)```/.exec(readme)![1]!;

test("the script in the README builds, and is the flagship example with fewer colorways", async () => {
  expect(script.trimEnd().split("\n").length).toBeLessThanOrEqual(30);
  const folder = mkdtempSync(join(tmpdir(), "readme-"));
  try {
    writeFileSync(join(folder, "orchard-blossom.ts"), script);
    const [fromReadme] = await loadPatterns(join(folder, "orchard-blossom.ts"));
    const [example] = await loadPatterns("examples/orchard-blossom.ts");
    const { digest } = await sprigwright.buildTile(fromReadme!);
    expect((await sprigwright.buildTile(example!)).digest).toBe(digest);
    // What docs/command.md shows of building it again.
    expect(command).toContain(`in the file  ${digest}`);
    for (const [name, colorway] of Object.entries(fromReadme!.colorways))
      expect(example!.colorways[name]).toEqual(colorway);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("the layers of the README, tidied by hand, build in its repeat, and the fillers pack around them", async () => {
  const snippet = /## Layers, regions[\s\S]*?```ts\n([\s\S]*?)```/.exec(readme)![1]!;
  const layout = new Function(...Object.keys(sprigwright), `${snippet}\nreturn layout;`)(
    ...Object.values(sprigwright),
  ) as sprigwright.LayoutUse<"stem" | "seed" | "marking" | "centre" | "fleck">;
  const inks = { stem: "#6f9a80", seed: "#7c3346", marking: "#df6d51", centre: "#e2a647", fleck: "#f4e6cb" };
  const tile = await sprigwright.buildTile(
    sprigwright.definePattern({
      name: "layers",
      seed: "hollin-quay-3",
      repeat: sprigwright.halfDrop({ width: "6.4in", height: "6.4in" }),
      layout,
      colorways: { dusk: { ground: "#24403f", ...inks } },
    }),
  );
  expect(tile.placements.filter(({ id }) => id.startsWith("1:"))).toHaveLength(6);
  expect(tile.figures.clearance).toBeGreaterThanOrEqual(2);
  expect(sprigwright.inspect(tile).findings).toEqual([]);
});

test("every picture that the README shows is there", () => {
  const pictures = [...readme.matchAll(/!\[[^\]]*\]\(([^)]+)\)/g)].map((match) => match[1]!);
  expect(pictures.length).toBeGreaterThan(4);
  for (const picture of pictures)
    expect(readFileSync(new URL(`../${picture}`, import.meta.url)).length).toBeGreaterThan(1000);
});
