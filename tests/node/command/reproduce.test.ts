import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import { beforeEach, describe, expect, test } from "vitest";
import { EXIT } from "../../../src/node/command/host.ts";
import { run } from "../../../src/node/command/run.ts";
import { chunk } from "../../../src/output/png/chunks.ts";
import { listener, put, scratch, scriptText } from "../given.ts";

/** A script with a motif of its own. */
const OWN = `
import { defineMotif, definePattern, param, pen, set, straight } from "sprigwright";
const shard = defineMotif({
  name: "studio/shard", about: "A shard.", parts: ["glass"],
  params: { size: param.length({ about: "Size.", min: 1, max: 50, default: SIZE }) },
  draw: ({ size }) => ({ glass: pen().moveTo(0, -size / 2).lineTo(size / 2, size / 2).lineTo(-size / 2, size / 2).close().path() }),
});
export default definePattern({
  name: "shards", seed: "s", repeat: straight({ width: "1in", height: "1in" }),
  layout: set({ motifs: [shard()], columns: 2, rows: 2 }),
  colorways: { ice: { ground: "#ffffff", glass: "#204060" } },
});`;

let folder: string;
beforeEach(async () => {
  folder = await scratch();
});

async function reproduce(...words: string[]): Promise<{ code: number; said: string; told: string }> {
  const host = listener();
  const code = await run(["reproduce", ...words], host);
  return { code, said: host.said(), told: host.told() };
}

describe("sprigwright reproduce", () => {
  test("builds what a PNG, an SVG and a PDF show again, and says that it is the same", async () => {
    const script = await put(folder, "slipway.ts", scriptText());
    await run(["build", script, "-o", folder, "--files", "png,svg,field,pdf,pattern"], listener());
    const long = ["--files", "png,svg", "--cut", "70x40mm", "--truecolor", "--knock-out", "--rights", "ours"];
    await run(["build", script, "-o", folder, ...long], listener());
    const ends = [
      ...["slate-150dpi.png", "slate.svg", "slate-field.png", "slate.pdf", "slate-pattern.svg"],
      ...["slate-70x40mm-150dpi.png", "slate-70x40mm.svg"],
    ];
    for (const end of ends) {
      const { code, said } = await reproduce(join(folder, `slipway/slipway-${end}`));
      expect(said).toContain("the same tile: the digests match");
      expect(said, end).toContain(
        end.endsWith(".pdf") ? "was not compared" : "the same picture: drawn again",
      );
      expect(said).toContain("in colorway slate");
      expect(code).toBe(EXIT.done);
    }
  });

  test("says that it is another when the file was changed, and ends with 1", async () => {
    const script = await put(folder, "slipway.ts", scriptText());
    await run(["build", script, "-o", folder, "--files", "svg"], listener());
    const svg = await readFile(join(folder, "slipway/slipway-slate.svg"), "utf8");
    const changed = await put(
      folder,
      "changed.svg",
      svg.replace("&quot;columns&quot;:2", "&quot;columns&quot;:3"),
    );
    const { code, said } = await reproduce(changed);
    expect(said).toContain("another tile: the digests differ");
    expect(code).toBe(EXIT.faults);
  });

  test("says so when only the picture was changed or cut short, and ends with 1", async () => {
    const script = await put(folder, "slipway.ts", scriptText());
    await run(["build", script, "-o", folder, "--files", "svg,png"], listener());
    const svg = await readFile(join(folder, "slipway/slipway-slate.svg"));
    const png = await readFile(join(folder, "slipway/slipway-slate-150dpi.png"));
    const flipped = Buffer.from(png);
    flipped[png.indexOf("IDAT") + 12]! ^= 1;
    const changed = [
      ["moved.svg", svg.toString().replace(/ d="M(\d)/, ' d="M1$1')],
      ["cut.svg", svg.subarray(0, svg.length - 30)],
      ["flipped.png", flipped],
      ["cut.png", png.subarray(0, png.indexOf("IDAT") + 12)],
    ] as const;
    for (const [name, content] of changed) {
      await writeFile(join(folder, name), content);
      const { code, said } = await reproduce(join(folder, name));
      expect(said, name).toContain("the same tile");
      expect(said, name).toContain("another picture: it was changed or cut short");
      expect(code).toBe(EXIT.faults);
    }
  });

  test("--recipe writes the recipe, from which build makes the same tile", async () => {
    const script = await put(folder, "slipway.ts", scriptText());
    await run(["build", script, "-o", folder, "--files", "svg"], listener());
    const recipe = join(folder, "again.json");
    await reproduce(join(folder, "slipway/slipway-slate.svg"), "--recipe", recipe);
    expect(await readFile(recipe)).toEqual(await readFile(join(folder, "slipway/recipe.json")));
    const { told, code } = await reproduce(
      join(folder, "slipway/slipway-slate.svg"),
      "--recipe",
      join(folder, "gone/a.json"),
    );
    expect([code, told]).toEqual([
      EXIT.notWritten,
      expect.stringContaining("a part of the path does not exist"),
    ]);
  });

  test("takes pieces of one's own from the script that is named, a changed one included", async () => {
    const script = await put(folder, "shards.ts", OWN.replace("SIZE", "4"));
    await run(["build", script, "-o", folder, "--files", "png"], listener());
    const png = join(folder, "shards/shards-ice-150dpi.png");
    const bare = await reproduce(png);
    expect([bare.code, bare.told]).toEqual([
      EXIT.wrongUse,
      expect.stringContaining("fix: name the script that has it: --at SCRIPT"),
    ]);
    expect((await reproduce(png, "--at", script)).said).toContain("the same tile");
    const other = await put(
      folder,
      "other.ts",
      OWN.replace("SIZE", "4").replace("size / 2).line", "size / 3).line"),
    );
    expect((await reproduce(png, "--at", other)).said).toContain("another tile");
    expect((await reproduce(png, "--at", script, "--at", other)).told).toContain("duplicate-plugin");
  });

  test("takes no text from a file to the terminal", async () => {
    const script = await put(folder, "slipway.ts", scriptText());
    await run(["build", script, "-o", folder, "--files", "svg"], listener());
    const svg = await readFile(join(folder, "slipway/slipway-slate.svg"), "utf8");
    const evil = svg
      .replace("&quot;colorway&quot;:&quot;slate", "&quot;colorway&quot;:&quot;\u009b31mslate")
      .replace(/&quot;digest&quot;:&quot;[0-9a-f]+/, "&quot;digest&quot;:&quot;\u202e\u009b2J");
    const { said, code } = await reproduce(await put(folder, "evil.svg", evil));
    expect(said).not.toMatch(/[\u009b\u202e]/);
    expect(said).toContain("no digest");
    expect(code).toBe(EXIT.faults);
  });

  test("refuses what is no such file, and what was cut short, clearly", async () => {
    const bomb = deflateSync(Buffer.alloc(40_000_000, 32));
    const text = Buffer.concat([Buffer.from("sprigwright:recipe\0\x01\0\0\0", "latin1"), bomb]);
    const png = (...chunks: Uint8Array[]): Buffer =>
      Buffer.concat([Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]), ...chunks]);
    const end = chunk("IEND", new Uint8Array(0));
    const cases: readonly (readonly [string, Buffer | string, string])[] = [
      ["gone.png", "", "no-such-file"],
      ["empty.png", "", "unknown-file-type"],
      ["plain.svg", "<svg/>", "no-recipe"],
      ["plain.png", png(end), "no-recipe"],
      ["short.png", png(end.subarray(0, 6)), "bad-png"],
      [
        "broken.png",
        png(chunk("iTXt", Buffer.concat([text.subarray(0, 30), Buffer.from("zzzz")])), end),
        "bad-png",
      ],
      ["bomb.png", png(chunk("iTXt", text), end), "recipe-too-large"],
      ["hollow.pdf", "%PDF-1.7\n", "bad-pdf"],
      [
        "deep.svg",
        `<recipe xmlns="urn:sprigwright:recipe">{"recipe":{"a":${"[".repeat(300)}${"]".repeat(300)}},"colorway":"a","digest":"b"}</recipe><svg/>`,
        "recipe-too-deep",
      ],
    ];
    for (const [name, content, code] of cases) {
      const file = join(folder, name);
      if (name !== "gone.png") await writeFile(file, content);
      const { told, code: exit } = await reproduce(file);
      expect(told, name).toContain(`[${code}]`);
      expect(exit).toBe(EXIT.wrongUse);
    }
  });
});
