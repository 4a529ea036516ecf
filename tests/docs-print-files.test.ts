// docs/print-files.md: the snippets of its sections on PDF, separations and TIFF run as they are printed.
import { existsSync, readFileSync } from "node:fs";
import ts from "typescript";
import { expect, it } from "vitest";
import orchard from "../examples/orchard-blossom.ts";
import { toTiff } from "../src/node/tiff/to-tiff.ts";
import { rasterize } from "../src/output/png/rasterize.ts";
import * as print from "../src/print.ts";
import { circle, rectangle, tileOf } from "./output/png/tiles.ts";

const page = readFileSync(new URL("../docs/print-files.md", import.meta.url), "utf8");
const sections = new Map(page.split(/^## /m).map((text) => [text.slice(0, text.indexOf("\n")), text]));
const snippets = ["PDF", "Separations", "TIFF"].flatMap((title) =>
  [...sections.get(title)!.matchAll(/^```ts\n([\s\S]*?)^```$/gm)].map(([, code]) => code!),
);
/** A CMYK profile of Debian's ghostscript stands for the printer's, where it is there. */
const profile = "/usr/share/color/icc/ghostscript/default_cmyk.icc";

it("the snippets of the page on print files run, and write what they say", async () => {
  expect(snippets.length).toBe(4);
  const tile = tileOf({ width: 25_400, height: 12_700 }, [
    { role: "leaf", path: rectangle(2000, 2000, 6000, 3000) },
    { role: "petal", path: circle(9000, 5000, 3500) },
    { role: "heart", path: circle(9000, 5000, 1000) },
  ]);
  const code = snippets.map((text) => text.replace(/^import .*\n/gm, "")).join("\n");
  const { outputText } = ts.transpileModule(`(async () => {${code}})()`, {
    compilerOptions: { target: ts.ScriptTarget.ES2022 },
  });
  const files = new Map<string, string | Uint8Array>();
  const given = {
    ...print,
    rasterize,
    toTiff: (png: Uint8Array, options?: { profile?: string }) =>
      toTiff(png, options?.profile && existsSync(profile) ? { profile } : {}),
    pattern: orchard,
    buildTile: async () => tile,
    writeFileSync: (name: string, content: string | Uint8Array) => files.set(name, content),
    console: { log: () => {} },
  };
  await new Function(...Object.keys(given), `return ${outputText}`)(...Object.values(given));
  const plates = ["ground", "leaf", "petal", "heart"].flatMap((role) => [`${role}.svg`, `${role}.png`]);
  expect([...files.keys()].sort()).toEqual(
    [...plates, "orchard-blossom-dawn.pdf", "dawn.tif", "dawn-cmyk.tif", "leaf.tif"].sort(),
  );
  expect([...files.values()].every((content) => content.length > 300)).toBe(true);
});

it("the page imports nothing that is not there", () => {
  for (const [, names, door] of page.matchAll(/^import \{ ([^}]+) \} from "(sprigwright[/\w]*)";$/gm))
    if (door === "sprigwright/print")
      expect(Object.keys(print)).toEqual(expect.arrayContaining(names!.split(", ")));
});
