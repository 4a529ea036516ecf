import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { buildTile } from "../src/index.ts";
import { loadPatterns } from "../src/node.ts";

const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
const script = /```ts\n([\s\S]*?)```/.exec(readme)![1]!;

test("the script in the README builds, and is the flagship example with fewer colorways", async () => {
  expect(script.trimEnd().split("\n").length).toBeLessThanOrEqual(30);
  const folder = mkdtempSync(join(tmpdir(), "readme-"));
  try {
    writeFileSync(join(folder, "orchard-blossom.ts"), script);
    const [fromReadme] = await loadPatterns(join(folder, "orchard-blossom.ts"));
    const [example] = await loadPatterns("examples/orchard-blossom.ts");
    expect((await buildTile(fromReadme!)).digest).toBe((await buildTile(example!)).digest);
    for (const [name, colorway] of Object.entries(fromReadme!.colorways))
      expect(example!.colorways[name]).toEqual(colorway);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("every picture that the README shows is there", () => {
  const pictures = [...readme.matchAll(/!\[[^\]]*\]\(([^)]+)\)/g)].map((match) => match[1]!);
  expect(pictures.length).toBeGreaterThan(4);
  for (const picture of pictures)
    expect(readFileSync(new URL(`../${picture}`, import.meta.url)).length).toBeGreaterThan(1000);
});
