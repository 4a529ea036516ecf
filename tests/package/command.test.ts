import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, inject, test } from "vitest";
import { scriptText } from "../node/given.ts";

const root = join(import.meta.dirname, "../..");
const command = join(inject("installed"), "node_modules/.bin/sprigwright");
const built = join(root, "dist/command.js");
// A folder that knows nothing of the package, as when the command is run by npx.
const elsewhere = mkdtempSync(join(tmpdir(), "sprigwright-elsewhere-"));
afterAll(() => rmSync(elsewhere, { recursive: true, force: true }));

const run = (words: readonly string[], cwd = elsewhere) =>
  spawnSync(process.execPath, [built, ...words], {
    cwd,
    encoding: "utf8",
    env: { ...process.env, NO_COLOR: "" },
  });

/** A pattern that takes long enough to be interrupted. */
const LONG = `
import { definePattern, leaf, straight, toss } from "sprigwright";
export default definePattern({
  name: "long", seed: "s", repeat: straight({ width: "36in", height: "36in" }),
  layout: toss({ gap: 1, motifs: [{ motif: leaf({ length: 9 }) }] }),
  colorways: { a: { ground: "#fff", blade: "#345", vein: "#fff" } },
});`;

describe("the command", () => {
  test("runs a TypeScript script that lies far from the package", () => {
    writeFileSync(join(elsewhere, "slipway.ts"), scriptText());
    const { status, stdout, stderr } = run(["build", "slipway.ts"]);
    expect(stderr).toBe("slipway: laying out\nslipway: making files\n");
    expect(status).toBe(0);
    expect(stdout).toContain(`wrote ${join("out", "slipway", "slipway-chalk.svg")}`);
    expect(readdirSync(join(elsewhere, "out/slipway"))).toHaveLength(8);
  });

  test("is there under its name where the package is installed", () => {
    if (!existsSync(command)) return; // linked by npm; absent where there was no registry
    const { stdout, status } = spawnSync(command, ["inspect", "slipway.ts"], {
      cwd: elsewhere,
      encoding: "utf8",
    });
    expect(stdout).toContain("nothing found");
    expect(status).toBe(0);
  });

  test("writes the same bytes again", () => {
    expect(run(["build", "slipway.ts", "-o", "again"]).status).toBe(0);
    for (const name of readdirSync(join(elsewhere, "out/slipway")))
      expect(readFileSync(join(elsewhere, "again/slipway", name))).toEqual(
        readFileSync(join(elsewhere, "out/slipway", name)),
      );
  });

  test("says in its exit code how it went", () => {
    expect(run(["--version"]).status).toBe(0);
    expect(run(["build", "gone.ts"]).status).toBe(2);
    writeFileSync(join(elsewhere, "odd.ts"), scriptText("odd").replaceAll('"1in"', "26"));
    expect(run(["build", "odd.ts", "-o", "odd"]).status).toBe(1);
    expect(run(["build", "slipway.ts", "-o", "slipway.ts/out"]).status).toBe(3);
  });

  test("does not end well when a script never finishes", () => {
    writeFileSync(join(elsewhere, "asleep.ts"), "await new Promise(() => {});\nexport default 1;");
    const { status, stderr } = run(["build", "asleep.ts"]);
    expect(status).toBe(2);
    expect(stderr).toContain("never finished");
  });

  test("is quiet when its reader has seen enough", () => {
    const { stdout, stderr } = spawnSync(
      "sh",
      ["-c", `"${process.execPath}" "${built}" describe --json | head -n 1`],
      { encoding: "utf8" },
    );
    expect([stdout, stderr]).toEqual(["{\n", ""]);
  });

  test("leaves nothing behind when it is interrupted, and ends with 130", async () => {
    writeFileSync(join(elsewhere, "long.ts"), LONG);
    const child = spawn(process.execPath, [built, "build", "long.ts", "-o", "cut"], { cwd: elsewhere });
    let told = "";
    child.stderr.on("data", (data: Buffer) => {
      if (told === "") setTimeout(() => child.kill("SIGINT"), 200);
      told += data.toString();
    });
    expect(await ended(child)).toBe(130);
    expect(told).toBe(
      "long: laying out\ninterrupted; nothing was left half-written; run it again to go on\n",
    );
    expect(existsSync(join(elsewhere, "cut"))).toBe(false);
  });
});

test("a script that is busy itself ends at once on Ctrl-C", async () => {
  writeFileSync(join(elsewhere, "busy.ts"), 'process.stdout.write("busy"); for (;;);');
  const child = spawn(process.execPath, [built, "build", "busy.ts", "-o", "busy"], { cwd: elsewhere });
  child.stdout.once("data", () => child.kill("SIGINT"));
  const signal = await new Promise((resolve) => child.once("close", (_, by) => resolve(by)));
  expect(signal).toBe("SIGINT");
  expect(existsSync(join(elsewhere, "busy"))).toBe(false);
});

const ended = (child: ChildProcess): Promise<number | null> =>
  new Promise((resolve) => child.once("close", (code) => resolve(code)));
