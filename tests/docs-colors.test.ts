// docs/colors.md: its snippets run as they stand, one after another, and what their comments promise comes out.
import { existsSync, readFileSync, statSync } from "node:fs";
import { transformSync } from "esbuild";
import { PNG } from "pngjs";
import { describe, expect, it } from "vitest";
import * as artwork from "../src/artwork.ts";
import * as root from "../src/index.ts";
import * as proof from "../src/proof.ts";
import { profile } from "./colorway/proof/profile.ts";

const docs = new URL("../docs/", import.meta.url);
const page = readFileSync(new URL("colors.md", docs), "utf8");

/** Sections by heading; that of colorways has patterns of its own, and tests of its own. */
const sections = page
  .split(/^## /m)
  .slice(1)
  .filter((section) => !section.startsWith("Colorways"));

const bay = new PNG({ width: 40, height: 30 });
bay.data.fill(255);
for (let i = 0; i < 40 * 12; i++) bay.data.set([39, 86, 107], 4 * i);
const BOAT =
  '<svg xmlns="http://www.w3.org/2000/svg"><path fill="#036" d="M0 5h30v9z"/><path fill="#c00" d="M4 0h9v5z"/></svg>';
const files: Readonly<Record<string, unknown>> = {
  "bay.png": new Uint8Array(PNG.sync.write(bay)),
  "boat.svg": BOAT,
  "press.icc": profile,
};

/** Runs the snippets of some sections in one place, and gives the constants that they make. */
async function run(texts: readonly string[]): Promise<Record<string, unknown>> {
  const source = texts.flatMap((text) =>
    [...text.matchAll(/^```ts\n(.*?)^```$/gms)].map(([, code]) => code!),
  );
  const bare = source.join("\n").replace(/^import [^;]*;\n/gm, "");
  const names = [...bare.matchAll(/^const (?:\[([^\]]*)\]|(\w+))/gm)].flatMap(([, list, one]) =>
    (list ?? one!).split(", "),
  );
  const { code } = transformSync(bare, { loader: "ts", target: "es2022" });
  const given = { ...root, ...artwork, ...proof, readFileSync: (name: string) => files[name] };
  const AsyncFunction = (async () => {}).constructor as FunctionConstructor;
  const work = new AsyncFunction(
    "given",
    `with (given) { return await (async () => { ${code}; return { ${names} }; })(); }`,
  );
  return (await (work as unknown as (given: object) => Promise<unknown>)(given)) as Record<string, unknown>;
}

describe("docs/colors.md", () => {
  it("has snippets that run, on what it says", async () => {
    const without =
      profile === undefined ? sections.filter((text) => !text.startsWith("Print proofs")) : sections;
    const made = await run(without);
    expect(made["again"]).toEqual(made["quay"]);
    expect(made["fromCss"]).toEqual(made["quay"]);
    expect(made["fromJson"]).toEqual(made["quay"]);
    expect(made["boatInks"]).toEqual({ name: "boat", inks: { hull: "#003366", sail: "#cc0000" } });
    expect(Object.keys((made["bay"] as root.Palette).inks)).toEqual(["white", "deep-blue"]);
    expect((made["four"] as root.Palette[]).map(({ name }) => name)).toEqual([
      "loft-1",
      "loft-2",
      "loft-3",
      "loft-4",
    ]);
    expect(Object.keys((made["atNight"] as root.Palette).inks)).toEqual(["chalk", "kelp", "buoy", "sea"]);
    expect((made["blenderInks"] as root.Colorway).inks).toEqual({ ground: "#f6ead7", leaf: "#3f6b4f" });
  });

  it("says in comments what comes out, as far as it says it", () => {
    const said = (call: string): string => page.split("\n").find((line) => line.startsWith(call))!;
    const { inside, ink, deltaE } = root.gamutOf("oklch(0.7 0.4 150)");
    expect(said("gamutOf(")).toContain(
      `{ inside: ${inside}, ink: "${ink}", deltaE: ${Math.floor(deltaE)}.… }`,
    );
    expect(said("contrast(")).toContain(`// ${Math.floor(root.contrast("#3f6b4f", "#f6ead7"))}.… to 1`);
    expect(said("deltaE(")).toContain(`// ${Math.floor(root.deltaE("#3f6b4f", "#4a6f55"))}.…, CIEDE2000`);
  });

  it("shows a picture of every scheme", () => {
    const shown = [...page.matchAll(/`schemes\.(\w+)\([^`]*` \| !\[\]\((pictures\/schemes\/\w+\.png)\)/g)];
    expect(shown.map(([, name]) => name).sort()).toEqual(Object.keys(root.schemes).sort());
    for (const [, name, file] of shown) {
      expect(file).toBe(`pictures/schemes/${name}.png`);
      expect(existsSync(new URL(file!, docs)) && statSync(new URL(file!, docs)).size < 60_000).toBe(true);
    }
  });
});
