import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { loadPatterns, loadPlugin } from "../../../src/node/load/load-patterns.ts";
import { writePattern } from "../../../src/node/write/write-pattern.ts";
import * as nodeDoor from "../../../src/node.ts";
import { buildTile } from "../../../src/tile/build.ts";
import { recipeOf } from "../../../src/tile/recipe.ts";
import { refusalOf } from "../../given.ts";
import { moorings, put, scratch, scriptText } from "../given.ts";

const plainText = scriptText().replace("const size: number", "const size");

describe("a script", () => {
  test.each(["ts", "mts", "js", "mjs"])("that ends in .%s gives its pattern", async (ending) => {
    const text = ending.endsWith("ts") ? scriptText() : plainText;
    const [pattern, ...more] = await loadPatterns(await put(await scratch(), `slipway.${ending}`, text));
    expect(pattern!.name).toBe("slipway");
    expect(more).toEqual([]);
    const tile = await buildTile(pattern!);
    expect(tile.placements).toHaveLength(4);
  });

  test("may export a list, a promise, and import modules of its own", async () => {
    const folder = await scratch();
    await put(folder, "first.ts", scriptText("first"));
    await put(folder, "second.ts", scriptText("second"));
    const file = await put(
      folder,
      "both.ts",
      'import a from "./first.ts";\nimport b from "./second.ts";\nexport default Promise.resolve([a, b]);',
    );
    expect((await loadPatterns(file)).map(({ name }) => name)).toEqual(["first", "second"]);
  });

  test("sees every door of the package, and the node door as it is", async () => {
    const file = await put(
      await scratch(),
      "doors.ts",
      `import * as node from "sprigwright/node";
       import { readArtwork } from "sprigwright/artwork";
       import * as lettering from "sprigwright/lettering";
       export default { doors: [Object.keys(node), typeof readArtwork, typeof lettering] };`,
    );
    const error = await refusalOf(() => loadPatterns(file));
    expect(error.what).toContain("an object with doors");
    const seen = await createDoorReader(file);
    expect(seen).toEqual([Object.keys(nodeDoor).sort(), "function", "object"]);
  });

  test("is read anew each time, so that an edit shows", async () => {
    const folder = await scratch();
    const file = await put(folder, "tide.ts", scriptText("ebb"));
    expect((await loadPatterns(file))[0]!.name).toBe("ebb");
    await put(folder, "tide.ts", scriptText("flood"));
    expect((await loadPatterns(file))[0]!.name).toBe("flood");
  });

  test("made with another copy of the library is understood", async () => {
    vi.resetModules();
    const copy = await import("../../../src/index.ts");
    vi.resetModules(); // so that the loader does not share it
    const folder = await scratch();
    // The other copy reaches the script through a global, as a plugin's own node_modules would bring it.
    Reflect.set(globalThis, "otherCopy", copy);
    const text = scriptText().replace(
      'import { definePattern, dot, set, straight } from "sprigwright";',
      "const { definePattern, dot, set, straight } = (globalThis as any).otherCopy;",
    );
    const [pattern] = await loadPatterns(await put(folder, "slipway.ts", text));
    const [own] = await loadPatterns(await put(folder, "own.ts", scriptText()));
    expect((await buildTile(pattern!)).digest).toBe((await buildTile(own!)).digest);

    const wrong = await put(folder, "wrong.ts", text.replace('spot: "#203040"', 'spit: "#203040"'));
    const error = await refusalOf(() => loadPatterns(wrong));
    expect(error.code).toBe("unknown-role");
    expect(error.where).toMatch(/wrong\.ts:\d+ > slipway > colorways > chalk > spit$/);
    Reflect.deleteProperty(globalThis, "otherCopy");
  });
});

/** Runs a script through the loader and picks up what it would have exported. */
async function createDoorReader(file: string): Promise<unknown> {
  const text = `import * as node from "sprigwright/node";
    import { readArtwork } from "sprigwright/artwork";
    import * as lettering from "sprigwright/lettering";
    globalThis.doorsSeen = [Object.keys(node).sort(), typeof readArtwork, typeof lettering];`;
  await put(join(file, ".."), "seen.ts", text.replace("globalThis.", "(globalThis as any)."));
  await refusalOf(() => loadPatterns(join(file, "../seen.ts")));
  const seen: unknown = Reflect.get(globalThis, "doorsSeen");
  Reflect.deleteProperty(globalThis, "doorsSeen");
  return seen;
}

describe("a recipe", () => {
  test("that writePattern wrote gives the pattern back", async () => {
    const out = await scratch();
    const [pattern] = await loadPatterns(await put(out, "slipway.ts", scriptText()));
    await writePattern(pattern!, { out, files: ["svg"] });
    const [again] = await loadPatterns(join(out, "slipway/recipe.json"));
    expect(recipeOf(again!)).toEqual(recipeOf(pattern!));
    expect((await buildTile(again!)).digest).toBe((await buildTile(pattern!)).digest);
  });

  test("may use a plugin that is loaded beside it", async () => {
    const folder = await scratch();
    const file = await put(folder, "moorings.json", JSON.stringify(recipeOf(moorings)));
    expect((await refusalOf(() => loadPatterns(file))).code).toBe("unknown-piece");
    const text = `import { defineMotif, definePlugin, param, pen } from "sprigwright";
      const square = (s: number) => pen().moveTo(0, 0).lineTo(s, 0).lineTo(s, s).close().path();
      const size = param.length({ about: "Size.", min: 1, max: 50, default: 5 });
      const one = (name: string, parts: string[]) => defineMotif({ name, about: "A motif.", params: { size }, parts,
        draw: ({ size }) => Object.fromEntries(parts.map((part) => [part, square(size)])) });
      export default definePlugin({ name: "harbour", version: "1.0.0",
        pieces: [one("harbour/buoy", ["float", "flag"]), one("harbour/pebble", ["pebble"])] });`;
    const plugin = await loadPlugin(await put(folder, "harbour.ts", text));
    const [pattern] = await loadPatterns(file, { plugins: [plugin] });
    expect(pattern!.name).toBe("moorings");
  });

  test.each([
    ["{", "bad-json"],
    ["[".repeat(5_000_000) + "]".repeat(5_000_000), "recipe-too-deep"],
    [JSON.stringify({ ...recipeOf(moorings), colourways: {} }), "unknown-key"],
    ["null", "wrong-type"],
  ])("that is not sound is refused, its file named (%#)", async (text, code) => {
    const file = await put(await scratch(), "recipe.json", text);
    const error = await refusalOf(() => loadPatterns(file));
    expect(error.code).toBe(code);
    expect(error.where.startsWith(file)).toBe(true);
  });
});

describe("a mistake is told with the file's name:", () => {
  const refusedText = async (text: string) => {
    const file = await put(await scratch(), "script.ts", text);
    const error = await refusalOf(() => loadPatterns(file));
    expect(error.where.startsWith(file)).toBe(true);
    return error;
  };

  test("no such file, with the nearest name beside it", async () => {
    const folder = await scratch();
    await put(folder, "slipway.ts", scriptText());
    const slip = await refusalOf(() => loadPatterns(join(folder, "slpiway.ts")));
    expect([slip.code, slip.fix]).toEqual(["no-such-file", 'did you mean "slipway.ts"?']);
    expect((await refusalOf(() => loadPatterns(join(folder, "slipway")))).fix).toContain('"slipway.ts"');
    expect((await refusalOf(() => loadPatterns(join(folder, "other.ts")))).fix).toContain("slipway.ts");
    expect((await refusalOf(() => loadPatterns(join(folder, "gone/other.ts")))).fix).toContain(
      "there is no folder",
    );
  });

  test("a file of another kind, or a folder", async () => {
    const folder = await scratch();
    expect((await refusalOf(() => loadPatterns(folder))).what).toBe("it is a folder");
    const picture = await put(folder, "picture.svg", "<svg/>");
    expect((await refusalOf(() => loadPatterns(picture))).fix).toContain(".mts, .js, .mjs, .json");
    await mkdir(join(folder, "sub.ts"));
    expect((await refusalOf(() => loadPatterns(join(folder, "sub.ts")))).code).toBe("unknown-file-type");
  });

  test("no default export", async () => {
    const error = await refusedText("export const first = 1, second = 2;");
    expect([error.code, error.what]).toEqual([
      "no-default-export",
      "it exports first, second, but no default",
    ]);
    expect((await refusedText("void 0;")).what).toBe("it exports nothing");
  });

  test("a default export that is no pattern", async () => {
    expect((await refusedText("export default 7")).what).toBe("its default export is 7, not a pattern");
    expect((await refusedText("export default () => 7")).what).toContain("a function");
    expect((await refusedText("export default []")).what).toContain("an empty list");
    const bare = scriptText().replace("export default definePattern({", "export default ({");
    expect((await refusedText(bare)).fix).toContain("definePattern");
    const copied = scriptText()
      .replace("export default definePattern(", "export default structuredClone(definePattern(")
      .replace(/\);\s*$/, "));");
    expect((await refusedText(copied)).code).toBe("not-a-pattern");
    const listed = await refusedText("export default [7]");
    expect(listed.where).toMatch(/script\.ts > default\[0\]$/);
  });

  test("a script that throws, with its line and the cause", async () => {
    const error = await refusedText(
      'interface Boat { name: string }\n\nthrow new RangeError("the tide is out");',
    );
    expect([error.code, error.what]).toEqual(["script-failed", "the script threw: the tide is out"]);
    expect(error.where).toMatch(/script\.ts:3$/);
    expect(error.cause).toBeInstanceOf(Error);
    expect((error.cause as Error).name).toBe("RangeError");
    expect((await refusedText('throw "just words"')).what).toBe("the script threw: just words");
  });

  test("a script that does not parse, with its line", async () => {
    const error = await refusedText("const a = 1;\nexport default {{;\n");
    expect(error.where).toMatch(/script\.ts:2$/);
    expect(error.code).toBe("script-failed");
  });

  test("a module that is not there", async () => {
    const error = await refusedText('import a from "./not-there.ts"; export default a;');
    expect(error.what).toBe("the script threw: Cannot find module './not-there.ts'");
    expect(error.fix).toContain("install what it imports");
  });

  test("a pattern that is refused, with the code of the refusal", async () => {
    const error = await refusedText(scriptText().replace('spot: "#203040"', 'spot: "blurple"'));
    expect(error.code).toBe("bad-color");
    expect(error.where).toMatch(/script\.ts:\d+ > slipway > colorways > chalk > spot$/);
  });
});
