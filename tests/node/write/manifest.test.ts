import { execFileSync, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdir, readFile, rename, stat, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { PDFDocument } from "@cantoo/pdf-lib";
import { describe, expect, onTestFinished, test } from "vitest";
import { FILE_KINDS } from "../../../src/node/write/formats/all.ts";
import { cutTag, sayCut } from "../../../src/node/write/formats/names.ts";
import { inPages } from "../../../src/node/write/formats/sheets.ts";
import { manifestText, readManifest } from "../../../src/node/write/manifest.ts";
import type { WriteOptions } from "../../../src/node/write/options.ts";
import { writePattern } from "../../../src/node/write/write-pattern.ts";
import { withColorways } from "../../../src/pattern/with-colorways.ts";
import { VERSION } from "../../../src/tile/version.ts";
import { refusalOf } from "../../given.ts";
import { contents, moorings, scratch } from "../given.ts";

const sha = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");
const write = (out: string, more: Partial<WriteOptions<"dawn" | "dusk">> = {}) =>
  writePattern(moorings, { out, files: ["svg", "png"], ...more });
const unchangedIn = (files: Awaited<ReturnType<typeof write>>): string[] =>
  files.flatMap(({ file, unchanged }) => (unchanged ? [file.split("/").at(-1)!] : [])).sort();

describe("manifest.json", () => {
  test("names every file but itself with its size and SHA-256, as Node counts them, and the version", async () => {
    const out = await scratch();
    await write(out);
    const manifest = (await readManifest(join(out, "moorings")))!;
    expect([manifest.sprigwright, manifest.pattern]).toEqual([VERSION, "moorings"]);
    expect(manifest.files.map(({ file }) => file)).toEqual(
      (await contents(join(out, "moorings"))).filter((name) => name !== "manifest.json"),
    );
    for (const { file, bytes, sha256 } of manifest.files) {
      const content = await readFile(join(out, "moorings", file));
      expect([content.length, sha(content)]).toEqual([bytes, sha256]);
    }
  });

  test("keeps the files of another run of the same tile, and forgets those that are gone", async () => {
    const out = await scratch();
    await write(out, { files: ["svg"] });
    await write(out, { files: ["png"], colorways: ["dawn"] });
    const names = async () => (await readManifest(join(out, "moorings")))!.files.map(({ file }) => file);
    expect(await names()).toEqual([
      "moorings-dawn-150dpi.png",
      "moorings-dawn.svg",
      "moorings-dusk.svg",
      "recipe.json",
    ]);
    await rename(join(out, "moorings/moorings-dusk.svg"), join(out, "mine.svg"));
    await write(out, { files: ["png"], colorways: ["dawn"] });
    expect(await names()).toEqual(["moorings-dawn-150dpi.png", "moorings-dawn.svg", "recipe.json"]);
  });

  test("that is none, or leads elsewhere, is as good as absent", async () => {
    const out = await scratch();
    await mkdir(join(out, "moorings"));
    const entry = { file: "../secret", kind: "svg", bytes: 1, sha256: "a", from: "b" };
    for (const text of [
      "",
      "[]",
      "{}",
      '{"files":3}',
      manifestText({ name: "moorings", digest: "d" }, [entry]),
    ]) {
      await writeFile(join(out, "moorings/manifest.json"), text);
      expect((await readManifest(join(out, "moorings")))?.files ?? []).toEqual([]);
      expect((await write(out, { files: ["svg"], colorways: ["dawn"] })).length).toBe(3);
    }
  });
});

describe("a run over what is there", () => {
  test("leaves right files alone, to the time they were written, and makes wrong ones anew", async () => {
    const out = await scratch();
    await write(out);
    const svg = join(out, "moorings/moorings-dawn.svg");
    const png = join(out, "moorings/moorings-dusk-150dpi.png");
    const [before, right] = [(await stat(svg)).mtimeMs, await readFile(png)];
    expect(unchangedIn(await write(out))).toHaveLength(6);
    expect((await stat(svg)).mtimeMs).toBe(before);
    // One byte of the same length: only the digest can tell.
    const wrong = Buffer.from(right);
    wrong[wrong.length - 20]! ^= 1;
    await writeFile(png, wrong);
    expect(unchangedIn(await write(out))).toEqual([
      "manifest.json",
      "moorings-dawn.svg",
      "moorings-dusk.svg",
      "recipe.json",
    ]);
    expect(await readFile(png)).toEqual(right);
  });

  test("makes anew what another setting, another colour or another tile changes", async () => {
    const out = await scratch();
    await write(out);
    const pngs = ["moorings-dawn-150dpi.png", "moorings-dusk-150dpi.png"];
    expect(unchangedIn(await write(out, { color: "truecolor" }))).toEqual(["recipe.json"]);
    expect(unchangedIn(await write(out, { rights: "Hollin Quay Prints" }))).toEqual(["recipe.json"]);
    const { dawn, dusk } = moorings.colorways;
    const recoloured = {
      ...moorings,
      colorways: { dusk, dawn: { ...dawn, inks: { ...dawn.inks, flag: "#112233" } } },
    };
    const other = await writePattern(recoloured, { out, files: ["png"] });
    expect(unchangedIn(other as never)).toEqual([]);
    expect(
      other
        .map(({ file }) => file.split("/").at(-1)!)
        .slice(0, 2)
        .sort(),
    ).toEqual(pngs);
  });

  test("goes on where a stopped one was, and clears up after it", async () => {
    const out = await scratch();
    await write(out);
    const target = join(out, "moorings");
    // What a run leaves that was killed: a folder of a process that is no more, with a file half written in it.
    const hidden = join(target, ".unfinished-999999999-abc");
    await mkdir(hidden);
    for (const name of ["manifest.json", "moorings-dawn.svg", "moorings-dusk.svg"])
      await rename(join(target, name), join(hidden, name));
    const made = (await stat(join(hidden, "moorings-dawn.svg"))).mtimeMs;
    await writeFile(join(hidden, "moorings-dusk-field.png.part"), "half");
    // And one of a process that lives: this one.
    await mkdir(join(target, `.unfinished-${process.pid}-def`));
    await write(out);
    expect((await stat(join(target, "moorings-dawn.svg"))).mtimeMs).toBe(made);
    expect((await contents(target)).filter((name) => name.startsWith("."))).toEqual([
      `.unfinished-${process.pid}-def`,
    ]);
  });
});

describe("files", () => {
  test.each([
    ["block", "", "one block"],
    ["unit", "-unit", "one unit"],
    [{ across: 3, down: 2 }, "-3x2", "3 x 2 blocks"],
    [{ width: "60in", height: 1234.5 }, "-1524x1234.5mm", "1524 x 1234.5 mm of cloth"],
  ] as const)("of the cut %o say so in their names", (cut, tag, words) => {
    expect([cutTag(cut), sayCut(cut)]).toEqual([tag, words]);
  });

  test("of every kind are written, each under a name of its own", async () => {
    const out = await scratch();
    const kinds = FILE_KINDS.filter((kind) => kind !== "tiff"); // wants a package that need not be there
    const files = await write(out, { files: kinds, cut: { across: 2, down: 1 }, colorways: ["dawn"] });
    expect(new Set(files.map(({ file }) => file)).size).toBe(files.length);
    expect([...new Set(files.map(({ kind }) => kind))].sort()).toEqual(
      [...kinds, "manifest", "recipe"].sort(),
    );
    const listed = JSON.parse(await readFile(join(out, "moorings/listing.json"), "utf8")) as {
      colorways: { files: string[] }[];
    };
    expect(listed.colorways[0]!.files).toContain("moorings-dawn-2x1-150dpi.png");
    expect(
      unchangedIn(await write(out, { files: kinds, cut: { across: 2, down: 1 }, colorways: ["dawn"] })),
    ).toHaveLength(files.length);
  });
});

describe("sheets of more colorways than one page holds", () => {
  test("go on from page to page, as evenly as can be", async () => {
    const { dawn } = moorings.colorways;
    const many = Array.from({ length: 61 }, (_, i) => ({ name: `dawn-${i + 1}`, inks: dawn.inks }));
    const out = await scratch();
    const files = await writePattern(withColorways(moorings, many), {
      ...{ out, files: ["colorway-sheet", "line-sheet"] },
    });
    const pagesOf = async (kind: string): Promise<number> =>
      (await PDFDocument.load(await readFile(files.find((file) => file.kind === kind)!.file))).getPageCount();
    expect([await pagesOf("colorway-sheet"), await pagesOf("line-sheet")]).toEqual([2, 3]);
    expect([[1, 2, 3, 4, 5, 6, 7], [1, 2], []].map((list) => inPages(list, 3))).toEqual([
      [
        [1, 2, 3],
        [4, 5],
        [6, 7],
      ],
      [[1, 2]],
      [],
    ]);
  });
});

describe("a full disk", () => {
  test("is told clearly, and nothing that was there is lost", async (context) => {
    const out = await scratch();
    const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=128k", "tmpfs", out]).status === 0;
    if (!mounted) {
      console.warn("SKIPPED: no small disk can be mounted here, so a full one was not tried");
      context.skip();
    }
    onTestFinished(() => void execFileSync("umount", [out]));
    await write(out, { files: ["svg"] });
    const before = await contents(out);
    const error = await refusalOf(() => write(out, { files: ["svg", "png", "field"], dpi: 2400 }));
    expect(error.code).toBe("write-failed");
    expect(error.what).toContain("the disk is full");
    expect(await contents(out)).toEqual(before);
    expect(unchangedIn(await write(out, { files: ["svg"] }))).toHaveLength(4);
  });
});

describe("options that are refused before any work", () => {
  test.each([
    [{ dpi: 0 }, "number-range"],
    [{ cut: "unti" }, "unknown-cut"],
    [{ cut: { across: 0, down: 1 } }, "number-range"],
    [{ layers: "knocked" }, "unknown-layering"],
    [{ color: "grey" }, "unknown-kind-of-color"],
    [{ bleed: 101 }, "length-range"],
    [{ bleed: "3px" }, "wrong-type"],
    [{ workers: 0 }, "number-range"],
    [{ rights: 3 }, "wrong-type"],
    [{ studio: 3 }, "wrong-type"],
    [{ recipe: "no" }, "wrong-type"],
    [{ only: ["svg"] }, "unknown-option"],
  ])("%o", async (options, code) => {
    const out = await scratch();
    const never = (): void => {
      throw new Error("work began");
    };
    expect((await refusalOf(() => write(out, { onProgress: never, ...options } as never))).code).toBe(code);
    expect(await contents(out)).toEqual([]);
  });
});
