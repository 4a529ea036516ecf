// docs/sheets.md: its snippets run as they are printed, on a small pattern.
import { readFileSync, statSync } from "node:fs";
import { expect, it } from "vitest";
import * as sprigwright from "../src/index.ts";
import * as node from "../src/node.ts";
import * as sheets from "../src/sheets.ts";
import { shore } from "./given-patterns.ts";

const docs = new URL("../docs/", import.meta.url);
const page = readFileSync(new URL("sheets.md", docs), "utf8");
const script = [...page.matchAll(/```ts\n(.*?)```/gs)].map(([, text]) => text!).join("\n");

it("the snippets of docs/sheets.md run, and write the files that they name", async () => {
  const written = new Map<string, string | Uint8Array>();
  const { dawn } = shore.colorways;
  const modules: Record<string, unknown> = {
    "node:fs/promises": {
      writeFile: async (name: string, bytes: string | Uint8Array) => void written.set(name, bytes),
    },
    sprigwright,
    "sprigwright/node": node,
    "sprigwright/sheets": sheets,
    "./orchard-blossom.ts": {
      default: { ...shore, colorways: { dawn, "high-tide": { ...dawn, name: "high-tide" } } },
    },
  };
  const body = script
    .replace(/^import (\w+) from "(.*)";$/gm, 'const { default: $1 } = modules["$2"];')
    .replace(/^import \* as (\w+) from "(.*)";$/gm, 'const $1 = modules["$2"];')
    .replace(/^import (\{.*\}) from "(.*)";$/gm, 'const $1 = modules["$2"];')
    .replaceAll(" as const", "");
  const AsyncFunction = (async () => {}).constructor as FunctionConstructor;
  await new AsyncFunction("modules", "console", body)(modules, { warn: () => {} });
  expect([...written.keys()]).toEqual([
    ...["strike-off.pdf", "colorways.png", "colorways.svg", "line-sheet.pdf", "print.pdf", "calendar.pdf"],
    ...["listing.json", "listing.csv", "swatches.svg"],
  ]);
  for (const [name, bytes] of written) {
    const start =
      typeof bytes === "string" ? bytes.slice(0, 4) : Buffer.from(bytes.subarray(0, 4)).toString("latin1");
    const kind = name.slice(name.lastIndexOf(".") + 1);
    const starts: Record<string, string> = {
      pdf: "%PDF",
      png: "\x89PNG",
      svg: "<svg",
      json: "{\n  ",
      csv: "name",
    };
    expect(start, name).toBe(starts[kind]);
  }
});

it("the pictures of docs/sheets.md are there, and light", () => {
  const pictures = [...page.matchAll(/src="(pictures\/[^"]+)"/g)].map(([, file]) => new URL(file!, docs));
  expect(pictures).toHaveLength(4);
  for (const file of pictures) expect(statSync(file).size).toBeLessThan(150_000);
});
