import { chmod, mkdir, readFile, stat, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { PNG } from "pngjs";
import { describe, expect, test } from "vitest";
import type { WriteProgress } from "../../../src/node/write/options.ts";
import { writePattern } from "../../../src/node/write/write-pattern.ts";
import { rasterize } from "../../../src/output/png/rasterize.ts";
import { toSvg } from "../../../src/output/svg/to-svg.ts";
import { createKit } from "../../../src/plugin/kit.ts";
import { definePlugin } from "../../../src/plugin/plugin.ts";
import { buildTile } from "../../../src/tile/build.ts";
import { buoy, pebble, refusalOf } from "../../given.ts";
import { contents, moorings, offGrid, scratch } from "../given.ts";

const ALL = [
  "moorings",
  "moorings/manifest.json",
  "moorings/moorings-dawn-150dpi.png",
  "moorings/moorings-dawn-field.png",
  "moorings/moorings-dawn.svg",
  "moorings/moorings-dusk-150dpi.png",
  "moorings/moorings-dusk-field.png",
  "moorings/moorings-dusk.svg",
  "moorings/recipe.json",
];

describe("writePattern writes", () => {
  test("a file for each colorway and kind, and a recipe, and says which", async () => {
    const out = await scratch();
    const files = await writePattern(moorings, { out });
    expect(await contents(out)).toEqual(ALL);
    expect(files.map(({ file }) => file).sort()).toEqual(
      ALL.slice(1)
        .map((name) => join(out, name))
        .sort(),
    );
    for (const { file, bytes, kind, colorway } of files) {
      expect((await stat(file)).size).toBe(bytes);
      const common = kind === "recipe" || kind === "manifest";
      expect(common ? colorway : ["dawn", "dusk"].includes(colorway!)).toBe(common ? undefined : true);
    }
  });

  test("what toSvg and rasterize give, read back by an independent PNG reader", async () => {
    const out = await scratch();
    await writePattern(moorings, { out, dpi: 300 });
    const tile = await buildTile(moorings);
    const raster = await rasterize(tile, { dpi: 300 });
    const { dusk } = moorings.colorways;
    expect(await readFile(join(out, "moorings/moorings-dusk.svg"), "utf8")).toBe(toSvg(tile, dusk));
    const png = await readFile(join(out, "moorings/moorings-dusk-300dpi.png"));
    expect(Buffer.compare(png, raster.png(dusk))).toBe(0);
    const { width, height } = PNG.sync.read(png);
    expect([width, height]).toEqual([300, 300]);
    const field = PNG.sync.read(await readFile(join(out, "moorings/moorings-dusk-field.png")));
    expect(Math.abs(field.width - 1600)).toBeLessThan(3);
  });

  test("a recipe that builds the same tile", async () => {
    const out = await scratch();
    await writePattern(moorings, { out, files: ["svg"] });
    const recipe: unknown = JSON.parse(await readFile(join(out, "moorings/recipe.json"), "utf8"));
    const harbour = definePlugin({ name: "harbour", version: "1.0.0", pieces: [buoy, pebble] });
    const tile = await createKit({ plugins: [harbour] }).build(recipe);
    expect(tile.digest).toBe((await buildTile(moorings)).digest);
  });

  test("the same bytes each time", async () => {
    const [one, two] = [await scratch(), await scratch()];
    await writePattern(moorings, { out: one });
    await writePattern(moorings, { out: two });
    for (const name of ALL.slice(1))
      expect(Buffer.compare(await readFile(join(one, name)), await readFile(join(two, name))), name).toBe(0);
  });

  test("only the kinds and colorways asked for, each once", async () => {
    const out = await scratch();
    const files = await writePattern(moorings, { out, files: ["svg", "svg"], colorways: ["dusk", "dusk"] });
    expect(files.map(({ kind }) => kind)).toEqual(["svg", "recipe", "manifest"]);
    expect(await contents(out)).toEqual([
      "moorings",
      "moorings/manifest.json",
      "moorings/moorings-dusk.svg",
      "moorings/recipe.json",
    ]);
  });

  test("over its own files, and leaves all others alone", async () => {
    const out = await scratch();
    await mkdir(join(out, "moorings"));
    await writeFile(join(out, "moorings/notes.txt"), "mine");
    await writeFile(join(out, "moorings/moorings-dawn.svg"), "old");
    await writePattern(moorings, { out, files: ["svg"], colorways: ["dawn"] });
    expect(await readFile(join(out, "moorings/notes.txt"), "utf8")).toBe("mine");
    expect(await readFile(join(out, "moorings/moorings-dawn.svg"), "utf8")).toContain("<svg");
  });

  test("and tells how far it is, never backwards, with the name of each file", async () => {
    const steps: WriteProgress[] = [];
    const files = await writePattern(moorings, {
      out: await scratch(),
      onProgress: (step) => steps.push(step),
    });
    const done = steps.map((step) => step.done);
    expect(done).toEqual([...done].sort((a, b) => a - b));
    expect(done.at(-1)).toBe(1);
    expect([...new Set(steps.map(({ stage }) => stage))]).toEqual(["tile", "files"]);
    const told = steps.flatMap(({ file }) => file ?? []);
    const pictures = files.filter(({ colorway }) => colorway !== undefined).map(({ file }) => file);
    expect(told.slice(0, -1).sort()).toEqual(pictures.sort());
    expect(told.at(-1)).toMatch(/manifest\.json$/);
  });
});

describe("writePattern leaves everything as it was", () => {
  test("when it is called off, at whatever step", async () => {
    const few = { files: ["svg", "png"], colorways: ["dawn"] } as const;
    let steps = 0;
    await writePattern(moorings, { ...few, out: await scratch(), onProgress: () => steps++ });
    // Some of them, from the first to the last.
    const stride = Math.max(1, Math.floor(steps / 16));
    for (let at = steps; at >= 1; at -= at > stride ? stride : 1) {
      const out = await scratch();
      await writeFile(join(out, "mine.txt"), "mine");
      const controller = new AbortController();
      let step = 0;
      const onProgress = (): void => {
        if (++step === at) controller.abort(new Error("enough"));
      };
      const writing = writePattern(moorings, { ...few, out, signal: controller.signal, onProgress });
      await expect(writing, `step ${at} of ${steps}`).rejects.toThrow("enough");
      expect(await contents(out)).toEqual(["mine.txt"]);
    }
  });

  test("when it is called off before it begins", async () => {
    const out = await scratch();
    await expect(writePattern(moorings, { out, signal: AbortSignal.abort(new Error("no")) })).rejects.toThrow(
      "no",
    );
    expect(await contents(out)).toEqual([]);
  });

  test("when the block is not whole pixels: the error of rasterize, unchanged, and no folder", async () => {
    const out = join(await scratch(), "deep/down");
    const error = await refusalOf(() => writePattern(offGrid, { out, files: ["svg", "png"] }));
    expect(error.code).toBe("not-whole-pixels");
    const own = await refusalOf(async () => rasterize(await buildTile(offGrid), { dpi: 150 }));
    expect(error.message).toBe(own.message);
    expect(await contents(join(out, "../.."))).toEqual([]);
  });

  test("when a folder stands where a file should go", async () => {
    const out = await scratch();
    await mkdir(join(out, "moorings/recipe.json"), { recursive: true });
    const error = await refusalOf(() => writePattern(moorings, { out, files: ["svg"] }));
    expect(error.code).toBe("write-failed");
    expect(error.message).toContain("recipe.json: it could not be written: a folder is in the way");
    expect(await contents(out)).toEqual(["moorings", "moorings/recipe.json"]);
  });
});

describe("writePattern refuses, before any work", () => {
  const never = (): void => {
    throw new Error("work began");
  };

  test("a folder that cannot be made", async () => {
    const file = join(await scratch(), "taken");
    await writeFile(file, "a file");
    const error = await refusalOf(() =>
      writePattern(moorings, { out: join(file, "out"), onProgress: never }),
    );
    expect(error.code).toBe("unwritable-folder");
    expect(error.message).toContain("a part of the path is a file");
    expect(error.cause).toMatchObject({ code: "ENOTDIR" });
    expect(await readFile(file, "utf8")).toBe("a file");
  });

  test("a folder without permission", async () => {
    const out = await scratch();
    await chmod(out, 0o555);
    // Root may write anywhere; nobody (uid 65534) may not.
    const isRoot = process.geteuid?.() === 0;
    if (isRoot) process.seteuid!(65_534);
    const error = await refusalOf(() => writePattern(moorings, { out, onProgress: never })).finally(() => {
      if (isRoot) process.seteuid!(0);
    });
    expect(error.code).toBe("unwritable-folder");
    expect(error.message).toContain("there is no permission");
    expect(await contents(out)).toEqual([]);
  });

  test.each([
    [{ out: "" }, "wrong-type", "out"],
    [{ out: "out", dpi: 72.5 }, "wrong-type", "a whole number of dots per inch"],
    [{ out: "out", dpi: 9600 }, "number-range", "9600 dpi is outside 1 dpi to 2400 dpi"],
    [{ out: "out", colorways: ["dwan"] }, "unknown-colorway", 'did you mean "dawn"'],
    [{ out: "out", colorways: [] }, "wrong-type", "dawn, dusk"],
    [{ out: "out", files: ["pgn"] }, "unknown-kind-of-file", 'did you mean "png"'],
    [{ out: "out", colourways: ["dawn"] }, "unknown-option", 'did you mean "colorways"'],
    [undefined, "wrong-type", "options"],
  ])("options %j", async (options, code, words) => {
    const error = await refusalOf(() =>
      writePattern(moorings, { ...options, ...(options && { onProgress: never }) } as never),
    );
    expect(error.code).toBe(options ? code : "wrong-type");
    expect(error.message).toContain(options ? words : "out");
  });

  test("a pattern put together by hand whose name leads elsewhere", async () => {
    const out = await scratch();
    const error = await refusalOf(() => writePattern({ ...moorings, name: "../elsewhere" }, { out }));
    expect(error.what).toContain("../elsewhere");
    const device = await refusalOf(() => writePattern({ ...moorings, name: "con" }, { out }));
    expect(device.what).toContain("Windows");
    expect(await contents(out)).toEqual([]);
  });

  test("colorways that the pattern lacks already when compiling", () => {
    // @ts-expect-error: the pattern has no colorway "noon".
    const writing = writePattern(moorings, { out: "out", colorways: ["noon"] });
    return expect(writing).rejects.toThrow('no colorway "noon"');
  });
});
