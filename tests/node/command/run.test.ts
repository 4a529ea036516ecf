import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { COMMANDS, type CommandName } from "../../../src/node/command/commands.ts";
import { ENDINGS } from "../../../src/node/command/help.ts";
import { EXIT } from "../../../src/node/command/host.ts";
import { run } from "../../../src/node/command/run.ts";
import { artworkPlugin } from "../../../src/plugin/artwork.ts";
import { createKit } from "../../../src/plugin/kit.ts";
import { letteringPlugin } from "../../../src/plugin/lettering.ts";
import { VERSION } from "../../../src/tile/version.ts";
import { contents, listener, put, scratch, scriptText } from "../given.ts";

// biome-ignore lint/suspicious/noControlCharactersInRegex: escape sequences begin with one
const ESCAPES = /\x1b\[[0-9;]*[A-Za-z]/;

let folder: string;
let script: string;
let out: string;
beforeEach(async () => {
  folder = await scratch();
  script = await put(folder, "slipway.ts", scriptText());
  out = join(folder, "out");
});

describe("sprigwright", () => {
  test("without a word shows its help, as wrong use", async () => {
    const host = listener();
    expect(await run([], host)).toBe(EXIT.wrongUse);
    expect(host.told()).toContain("build SCRIPT...");
    expect(host.said()).toBe("");
  });

  test("--version says the version and nothing else", async () => {
    for (const flag of ["--version", "-v"]) {
      const host = listener();
      expect(await run([flag], host)).toBe(EXIT.done);
      expect(host.said()).toBe(`${VERSION}\n`);
    }
  });

  test("--help names every command and every exit code", async () => {
    const host = listener();
    expect(await run(["--help"], host)).toBe(EXIT.done);
    for (const name of Object.keys(COMMANDS)) expect(host.said()).toContain(name);
    for (const code of Object.values(EXIT)) expect(host.said()).toMatch(new RegExp(`\\b${code}  `));
    expect(ENDINGS.map(([code]) => code)).toEqual(Object.values(EXIT));
  });

  test.each(Object.keys(COMMANDS))("%s --help names every flag it takes, in 80 columns", async (command) => {
    const host = listener({ columns: 80 });
    expect(await run([command, "--help"], host)).toBe(EXIT.done);
    for (const flag of Object.keys(COMMANDS[command as CommandName].flags))
      expect(host.said()).toContain(`--${flag}`);
    for (const line of host.said().split("\n")) expect(line.length).toBeLessThanOrEqual(80);
  });

  test.each([
    [["buidl", "a.ts"], 'did you mean "build"'],
    [["--verison"], 'did you mean "--version"'],
    [["build"], "sprigwright build SCRIPT..."],
    [["build", "a.ts", "--colourway", "dawn"], 'did you mean "--colorway"'],
    [["build", "a.ts", "-x"], 'there is no flag "-x"'],
    [["build", "a.ts", "--out"], "its value is missing"],
    [["build", "a.ts", "--out", "--dpi", "300"], "its value is missing"],
    [["build", "a.ts", "--out", "a", "--out", "b"], "given twice"],
    [["build", "a.ts", "--dpi", "150.5"], "is not a whole number from 1 to 2400"],
    [["build", "a.ts", "--dpi", "0"], "is not a whole number from 1 to 2400"],
    [["describe", "--json=yes"], "it takes no value"],
    [["describe", "toss", "set"], "2 names were given"],
    [["describe", "tos"], 'did you mean "toss"'],
    [["inspect", "a.ts", "--surface", "fabrik"], 'did you mean "fabric"'],
    [["build", "__proto__.ts"], "there is no such file"],
    [["constructor"], "there is no command"],
  ])("refuses %j", async (words, hint) => {
    const host = listener();
    expect(await run(words, host)).toBe(EXIT.wrongUse);
    expect(host.told()).toContain(hint);
    expect(host.told()).not.toMatch(/\n\s+at /);
    expect(host.said()).toBe("");
  });
});

describe("sprigwright build", () => {
  test("writes the files and says which, how large and where, plainly in a pipe", async () => {
    const host = listener();
    expect(await run(["build", script, "--out", out], host)).toBe(EXIT.done);
    const files = (await contents(out)).filter((name) => name.includes("/"));
    expect(files).toHaveLength(8);
    for (const name of files) expect(host.said()).toContain(`wrote ${join(out, name)}\n`);
    expect(host.said()).toContain(`in ${join(out, "slipway")}\n`);
    expect(host.said()).toMatch(/png {5}2 {2}.* {2}one block, 150 x 150 px at 150 dpi\n/);
    expect(host.told()).toBe("slipway: laying out\nslipway: making files\n");
    expect(host.said() + host.told()).not.toMatch(ESCAPES);
  });

  test("draws one line again and again on a terminal, within its width, and takes it away", async () => {
    const host = listener({ terminal: true, columns: 60 });
    expect(await run(["build", script, "--out", out], host)).toBe(EXIT.done);
    const lines = host.told().split("\r");
    expect(host.told()).not.toContain("\n");
    expect(lines.length).toBeGreaterThan(8);
    for (const line of lines) expect(line.replace(new RegExp(ESCAPES, "g"), "").length).toBeLessThan(60);
    expect(lines.at(-1)).toBe("\x1b[K");
    expect(lines.some((line) => line.includes("slipway-chalk.svg"))).toBe(true);
    expect(host.said()).not.toContain("wrote ");
  });

  test("leaves colours out for NO_COLOR, and the drawn line too on a dumb terminal", async () => {
    const plain = listener({ terminal: true, env: { NO_COLOR: "1" } });
    await run(["build", script, "--out", out], plain);
    expect(plain.told()).toContain("\r\x1b[K");
    expect(plain.said() + plain.told().replaceAll("\x1b[K", "")).not.toMatch(ESCAPES);
    const dumb = listener({ terminal: true, env: { TERM: "dumb" } });
    await run(["build", script, "--out", out], dumb);
    expect(dumb.said() + dumb.told()).not.toMatch(ESCAPES);
  });

  test("takes a dpi, colorways and kinds", async () => {
    const words = [
      "build",
      script,
      `--out=${out}`,
      "--dpi",
      "300",
      "--colorway",
      "slate",
      "--files",
      "svg,png",
    ];
    expect(await run(words, listener())).toBe(EXIT.done);
    expect(await contents(join(out, "slipway"))).toEqual([
      "manifest.json",
      "recipe.json",
      "slipway-slate-300dpi.png",
      "slipway-slate.svg",
    ]);
  });

  test("says what is odd about a listing, and --hero that several subjects are meant", async () => {
    const spot = '{ body: "spot", trim: "ground", marking: "ground" }';
    const mixed = scriptText("mixed")
      .replace("{ definePattern, dot,", "{ definePattern, fish, whelk,")
      .replace(
        /motifs: .*\]/,
        `motifs: [fish({ length: 9, roles: ${spot} }), whelk({ height: 9, roles: ${spot} })]`,
      );
    const file = await put(folder, "mixed.ts", mixed);
    const said = async (...words: string[]): Promise<string> => {
      const host = listener();
      expect(await run(["build", file, "-o", out, "--files", "listing", ...words], host)).toBe(EXIT.done);
      return host.said();
    };
    expect(await said()).toMatch(/\n {2}warning {2}(fish and whelks|whelks and fish) are 2 subjects: /);
    expect(await said("--hero")).not.toContain("2 subjects");
    const { hero, warnings } = JSON.parse(await readFile(join(out, "mixed/listing.json"), "utf8"));
    expect([hero, warnings.map(({ rule }: { rule: string }) => rule)]).toEqual([true, ["no-subject"]]);
  });

  test("--no-recipe keeps the recipe out of pictures, and in recipe.json", async () => {
    const words = ["build", script, "--out", out, "--files", "svg,png,field,pattern,pdf", "--no-recipe"];
    expect(await run(words, listener())).toBe(EXIT.done);
    for (const file of (await contents(join(out, "slipway"))).filter((name) =>
      /\.(svg|png|pdf)$/.test(name),
    )) {
      const host = listener();
      expect(await run(["reproduce", join(out, "slipway", file)], host)).toBe(EXIT.wrongUse);
      expect(host.told()).toContain("there is no recipe in it");
    }
    expect(await readFile(join(out, "slipway/recipe.json"), "utf8")).toContain("slip-1");
  });

  test("takes a recipe, and every script of a folder that exports a pattern", async () => {
    await put(folder, "notes.ts", "export const note = 1;");
    await put(folder, "types.d.ts", "export default 3;");
    await put(folder, "quay.ts", scriptText("quay"));
    const host = listener();
    expect(await run(["build", folder, "-o", out, "--files", "svg"], host)).toBe(EXIT.done);
    expect(await contents(out)).toContain("quay/quay-chalk.svg");
    expect(await contents(out)).toContain("slipway/slipway-chalk.svg");
    expect(host.said()).toContain(`left aside ${join(folder, "notes.ts")}`);
    expect(host.said()).toContain("2 patterns, 8 files");
    const again = join(folder, "again");
    expect(
      await run(["build", join(out, "quay/recipe.json"), "-o", again, "--files", "svg"], listener()),
    ).toBe(EXIT.done);
    const name = "quay/quay-slate.svg";
    expect(await readFile(join(again, name), "utf8")).toBe(await readFile(join(out, name), "utf8"));
  });

  test("refuses a folder without patterns, and two patterns of one name, before it writes", async () => {
    const empty = join(folder, "empty");
    await mkdir(empty);
    const none = listener();
    expect(await run(["build", empty, "-o", out], none)).toBe(EXIT.wrongUse);
    expect(none.told()).toContain("[no-patterns]");
    const twin = await put(folder, "twin.ts", scriptText("slipway"));
    const host = listener();
    expect(await run(["build", script, twin, "-o", out], host)).toBe(EXIT.wrongUse);
    expect(host.told()).toContain(`"slipway" is also the name of a pattern in ${script}`);
    expect(await contents(folder)).not.toContain("out");
  });

  test("checks every pattern before it builds the first", async () => {
    const bad = await put(folder, "zz.ts", scriptText("zz").replaceAll("slate", "night"));
    const host = listener();
    expect(await run(["build", script, bad, "-o", out, "--colorway", "slate"], host)).toBe(EXIT.wrongUse);
    expect(host.told()).toContain('zz > colorways: there is no colorway "slate"');
    expect(await contents(folder)).not.toContain("out");
  });

  test("ends with 1 for what a print cannot have, and 3 for what a disk cannot", async () => {
    const odd = await put(folder, "odd.ts", scriptText("odd").replaceAll('"1in"', "26"));
    const print = listener();
    expect(await run(["build", odd, "-o", out], print)).toBe(EXIT.faults);
    expect(print.told()).toContain("nearest sizes that are at 150");
    await writeFile(out, "a file");
    const disk = listener();
    expect(await run(["build", script, "-o", out], disk)).toBe(EXIT.notWritten);
    expect(disk.told()).toContain("a part of the path is a file");
    expect(await readFile(out, "utf8")).toBe("a file");
  });

  test("ends with 130 when it is interrupted, leaves nothing in sight, and goes on from there", async () => {
    const stoppedAt = async (file: string): Promise<string[]> => {
      const controller = new AbortController();
      const host = listener({ terminal: true, signal: controller.signal });
      const write = (text: string): void => {
        if (text.includes(file)) controller.abort();
        host.err.write(text);
      };
      const err = { ...host.err, write };
      expect(await run(["build", script, "-o", out], { ...host, err })).toBe(EXIT.interrupted);
      expect(host.told()).toContain("interrupted");
      return contents(folder);
    };
    expect(await stoppedAt("laying out")).toEqual(["slipway.ts"]);
    const left = await stoppedAt("slipway-slate-150dpi.png");
    expect(left.filter((name) => !name.includes(".unfinished-"))).toEqual([
      "out",
      "out/slipway",
      "slipway.ts",
    ]);
    const hidden = left.find((name) => /unfinished-[^/]*$/.test(name))!;
    // As if the process that was interrupted had ended, which it does here only with the tests.
    await rename(join(folder, hidden), join(folder, hidden.replace(String(process.pid), "999999999")));
    const host = listener();
    expect(await run(["build", script, "-o", out], host)).toBe(EXIT.done);
    expect((await contents(out)).filter((name) => name.includes("unfinished"))).toEqual([]);
    const again = listener();
    expect(await run(["build", script, "-o", out], again)).toBe(EXIT.done);
    expect(again.said()).not.toContain("wrote ");
    expect(again.said()).toContain("(as it was)");
  });

  test("tells a script's error in two lines, and where in the code only with --stack", async () => {
    const bad = await put(folder, "bad.ts", '\nthrow new Error("the tide is out");');
    const host = listener();
    expect(await run(["build", bad], host)).toBe(EXIT.wrongUse);
    expect(host.told()).toMatch(
      /bad\.ts:2: the script threw: the tide is out\n {2}fix: .* \[script-failed\]\n$/,
    );
    const more = listener();
    expect(await run(["build", bad, "--stack"], more)).toBe(EXIT.wrongUse);
    expect(more.told()).toMatch(/because of Error: the tide is out\n\s+at .*bad\.ts:2/);
  });
});

describe("sprigwright inspect", () => {
  test("says so when there is nothing to find, and writes no file", async () => {
    const host = listener();
    expect(await run(["inspect", script], host)).toBe(EXIT.done);
    expect(host.said()).toBe("slipway  straight, block 25.4 x 25.4 mm, 4 motifs, 2 inks\n  nothing found\n");
    expect(await contents(folder)).toEqual(["slipway.ts"]);
  });

  test("lists warnings within the width, and still ends with 0", async () => {
    const faint = await put(folder, "faint.ts", scriptText().replace('spot: "#203040"', 'spot: "#fefefe"'));
    const host = listener({ columns: 72 });
    expect(await run(["inspect", faint, "--surface", "paper"], host)).toBe(EXIT.done);
    expect(host.said()).toContain("no fault, 1 warning");
    expect(host.said()).toContain("role spot");
    for (const line of host.said().split("\n")) expect(line.length).toBeLessThanOrEqual(72);
  });
});

describe("sprigwright describe", () => {
  test("lists every piece within 80 columns", async () => {
    const host = listener({ columns: 80 });
    expect(await run(["describe"], host)).toBe(EXIT.done);
    for (const { name } of createKit().describe().pieces)
      expect(host.said()).toContain(`  ${name.split("/")[1]} `);
    for (const line of host.said().split("\n")) expect(line.length).toBeLessThanOrEqual(80);
  });

  test("--json gives what a kit describes", async () => {
    const host = listener({ terminal: true });
    expect(await run(["describe", "--json"], host)).toBe(EXIT.done);
    expect(JSON.parse(host.said())).toEqual(
      JSON.parse(JSON.stringify(createKit({ plugins: [artworkPlugin(), letteringPlugin()] }).describe())),
    );
  });

  test("tells every parameter of one piece", async () => {
    for (const name of ["toss", "sprigwright/toss"]) {
      const host = listener();
      expect(await run(["describe", name], host)).toBe(EXIT.done);
      for (const word of ["gap", "density", "airy | even | packed", 'default "even"', "must be given"])
        expect(host.said()).toContain(word);
    }
    const toss = listener({ columns: 200 });
    await run(["describe", "toss"], toss);
    expect(toss.said()).toContain(
      'direction  one-way | two-way | four-way | tossed, or a list of 1 to 360, each -1 to 1 turns; default "tossed"',
    );
    expect(toss.said()).toContain("scale  0.05 to 20, or [least, most]; default 1");
    for (const name of ["inside", "outside"])
      expect(toss.said()).toContain(
        `${name}  path data in mm, or stripes({ … }), see describe stripes; may be left out`,
      );
    const scheme = listener();
    await run(["describe", "dusk"], scheme);
    expect(scheme.said()).toContain("of  a palette: { name, inks }; may be left out");
    await run(["describe", "triad"], scheme);
    expect(scheme.said()).toContain("of  any opaque CSS colour; must be given");
    const host = listener();
    await run(["describe", "toss", "--json"], host);
    expect(JSON.parse(host.said())).toMatchObject({ name: "sprigwright/toss", kind: "layout" });
  });

  test("tells what stripes take, which are no piece but an area for a toss", async () => {
    const host = listener();
    expect(await run(["describe", "stripes"], host)).toBe(EXIT.done);
    expect(host.said()).toMatch(/^stripes {2}area\n/);
    expect(host.said()).toContain("count  whole number, 1 to 200; must be given");
    expect(host.said()).toContain('run  across | down; default "down"');
    const list = listener();
    await run(["describe"], list);
    expect(list.said()).toMatch(/\nareas\n {2}stripes +Even stripes/);
  });

  test("shows a plugin's pieces under its name", async () => {
    const plugin = await put(
      folder,
      "plugin.ts",
      `import { defineCheck, definePlugin } from "sprigwright";
       const look = () => [];
       export default definePlugin({ name: "quay", version: "1.0.0",
         pieces: [defineCheck({ name: "quay/tide", about: "Looks at the tide.", look })] });`,
    );
    const host = listener();
    expect(await run(["describe", "--plugin", plugin], host)).toBe(EXIT.done);
    expect(host.said()).toContain("quay/tide");
    const wrong = listener();
    expect(await run(["describe", "--plugin", script], wrong)).toBe(EXIT.wrongUse);
    expect(wrong.told()).toContain("slipway.ts");
  });
});
