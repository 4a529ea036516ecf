import { execFileSync, spawnSync } from "node:child_process";
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { describe, expect, inject, test } from "vitest";
import { VERSION } from "../../src/tile/version.ts";

const root = join(import.meta.dirname, "../..");
const installed = inject("installed");
const node = (...words: string[]): string =>
  execFileSync(process.execPath, words, { cwd: installed, encoding: "utf8" }).trim();

const JOB = `
  const pattern = definePattern({
    name: "quays", seed: "ebb-1", repeat: straight({ width: "1in", height: "1in" }),
    layout: set({ motifs: [dot({ size: 4 })], columns: 2, rows: 2 }),
    colorways: { dawn: { ground: "#fff", dot: "#345" } },
  });
  buildTile(pattern).then(async (tile) => {
    const png = (await rasterize(tile, { dpi: 150 })).png(pattern.colorways.dawn);
    console.log([typeof writePattern, tile.digest, toSvg(tile, pattern.colorways.dawn).length, png.length].join(" "));
  });`;
const NAMES = "buildTile, definePattern, dot, rasterize, set, straight, toSvg";

describe("the packed package, installed in an empty folder,", () => {
  test("does the same by import and by require", () => {
    writeFileSync(
      join(installed, "job.mjs"),
      `import { ${NAMES} } from "sprigwright";\nimport { writePattern } from "sprigwright/node";\nimport "sprigwright/artwork";\nimport "sprigwright/lettering";\nimport "sprigwright/proof";\nimport "sprigwright/print";\nimport "sprigwright/sheets";${JOB}`,
    );
    writeFileSync(
      join(installed, "job.cjs"),
      `const { ${NAMES} } = require("sprigwright");\nconst { writePattern } = require("sprigwright/node");\nrequire("sprigwright/artwork");\nrequire("sprigwright/lettering");\nrequire("sprigwright/proof");\nrequire("sprigwright/print");\nrequire("sprigwright/sheets");${JOB}`,
    );
    const said = node("job.mjs");
    expect(said).toMatch(/^function [0-9a-f]{64} \d+ \d+$/);
    expect(node("job.cjs")).toBe(said);
  });

  test("has no other way in than its doors", () => {
    const deep = spawnSync(process.execPath, ["-e", 'import("sprigwright/dist/errors/error.js")'], {
      cwd: installed,
      encoding: "utf8",
    });
    expect(deep.stderr).toContain("ERR_PACKAGE_PATH_NOT_EXPORTED");
  });

  test("carries the version that recipes are signed with, and no source, tests or maps", () => {
    const place = join(installed, "node_modules/sprigwright");
    const info = JSON.parse(readFileSync(join(place, "package.json"), "utf8")) as { version: string };
    expect(info.version).toBe(VERSION);
    const listed = execFileSync("npm", ["pack", "--dry-run", "--json"], { cwd: root, encoding: "utf8" });
    const [{ files }] = JSON.parse(listed) as [{ files: { path: string }[] }];
    const odd = files
      .map(({ path }) => path)
      .filter(
        (path) =>
          !/^(dist\/.*\.(js|d\.ts)|docs\/[\w-]+\.md|examples\/.*\.ts|[A-Z]+(\.md)?|package\.json)$/.test(
            path,
          ),
      );
    expect(odd).toEqual([]);
    expect(files.map(({ path }) => path)).toEqual(
      expect.arrayContaining(["LICENSE", "README.md", "CHANGELOG.md"]),
    );
  });

  test("names no types of the packages that it is made with", () => {
    for (const door of ["index", "artwork", "lettering", "print", "proof", "sheets", "node"]) {
      const types = readFileSync(join(installed, `node_modules/sprigwright/dist/${door}.d.ts`), "utf8");
      expect(types).not.toMatch(/from ['"](?!\.)/);
      expect(types).not.toContain("declare module");
    }
  });

  test.each([
    ["typescript", "nodenext"],
    ["typescript6", "bundler"],
  ])("type-checks a program with %s under %s", (compiler, resolution) => {
    copyFileSync(join(root, "tests/package/consumer/uses.ts"), join(installed, "uses.ts"));
    const config = {
      compilerOptions: {
        target: "es2022",
        lib: ["es2022", "dom"],
        types: [],
        strict: true,
        exactOptionalPropertyTypes: true,
        noEmit: true,
        skipLibCheck: false,
        module: resolution === "nodenext" ? "nodenext" : "esnext",
        moduleResolution: resolution,
      },
      files: ["uses.ts"],
    };
    const file = join(installed, `tsconfig.${compiler}.${resolution}.json`);
    writeFileSync(file, JSON.stringify(config));
    const tsc = join(root, "node_modules", compiler, "bin/tsc");
    const { stdout, status } = spawnSync(process.execPath, [tsc, "-p", file], {
      cwd: installed,
      encoding: "utf8",
    });
    expect(stdout).toBe("");
    expect(status).toBe(0);
  });
});

describe("a bundler for browsers", () => {
  const bundle = async (source: string) =>
    build({
      stdin: { contents: source, resolveDir: installed },
      bundle: true,
      minify: true,
      platform: "browser",
      format: "esm",
      write: false,
      metafile: true,
      logLevel: "silent",
    });
  /** Packages of which code stays in the bundle. */
  const kept = ({ metafile }: Awaited<ReturnType<typeof bundle>>): string[] => {
    const inputs = Object.values(metafile.outputs)[0]!.inputs;
    const used = Object.keys(inputs).filter((file) => inputs[file]!.bytesInOutput > 0);
    return [
      ...new Set(used.flatMap((file) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[1] ?? [])),
    ].sort();
  };

  test.each([
    "sprigwright",
    "sprigwright/artwork",
    "sprigwright/lettering",
    "sprigwright/print",
    "sprigwright/sheets",
  ])("takes the whole of %s, and nothing of Node's", async (door) => {
    const bundled = await bundle(`export * from "${door}"`);
    for (const { imports } of Object.values(bundled.metafile.outputs)) expect(imports).toEqual([]);
    expect(bundled.warnings).toEqual([]);
  });

  test("is told that sprigwright/node is for Node", async () => {
    await expect(bundle('export * from "sprigwright/node"')).rejects.toThrow(
      'Could not resolve "sprigwright/node"',
    );
  });

  test("leaves out what is not imported: no geometry engine for one contrast", async () => {
    const bundled = await bundle(
      'import { contrast } from "sprigwright"; console.log(contrast("#000", "#fff"))',
    );
    expect(kept(bundled)).toEqual(["culori", "sprigwright"]);
    expect(bundled.outputFiles[0]!.contents.length).toBeLessThan(32_000);
    const repeat = await bundle('import { halfDrop } from "sprigwright"; console.log(halfDrop)');
    expect(kept(repeat)).toEqual(["sprigwright"]);
    expect(repeat.outputFiles[0]!.contents.length).toBeLessThan(8_000);
  });

  test("whose output runs as in a web worker: the same tile and the same files as in Node", async () => {
    const bundled = await bundle(
      `import { ${NAMES} } from "sprigwright"; const writePattern = () => {};${JOB}`,
    );
    // What every worker has and Node 20 has not; paper looks at it when it is loaded.
    const worker =
      "globalThis.self = globalThis; globalThis.navigator ??= { userAgent: '', platform: '' };\n";
    writeFileSync(join(installed, "worker.mjs"), worker + bundled.outputFiles[0]!.text);
    expect(node("worker.mjs")).toBe(node("job.mjs"));
  });
});
