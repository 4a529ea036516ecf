import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "../../../src/node/command/run.ts";
import { loadPatterns } from "../../../src/node/load/load-patterns.ts";
import { loadPicks } from "../../../src/node/load/load-picks.ts";
import { refusalOf } from "../../given.ts";
import { contents, listener, put, scratch, scriptText } from "../given.ts";

describe("picks beside a script", () => {
  it("are its own by the pattern's name, and none where there is no file", async () => {
    const folder = await scratch();
    const script = await put(folder, "yard.ts", scriptText("slipway"));
    const [pattern] = await loadPatterns(script);
    expect(await loadPicks(script, pattern!)).toBeUndefined();
    await put(folder, "yard.picks.json", '{ "colorways": ["nobody"] }');
    expect(await loadPicks(script, pattern!)).toBeUndefined();
    await put(folder, "slipway.picks.json", '{ "colorways": ["slate"] }');
    expect(await loadPicks(script, pattern!)).toEqual(["slate"]);
  });

  it("that cannot be read, or are too large, say so", async () => {
    const folder = await scratch();
    const pattern = { name: "slipway", colorways: { slate: {} } };
    await mkdir(join(folder, "slipway.picks.json"));
    expect((await refusalOf(() => loadPicks(join(folder, "yard.ts"), pattern))).where).toContain(
      "slipway.picks.json",
    );
    await put(folder, "big.picks.json", " ".repeat(400_001));
    const big = await refusalOf(() => loadPicks(join(folder, "yard.ts"), { ...pattern, name: "big" }));
    expect(big.code).toBe("bad-json");
  });
});

describe("sprigwright build", () => {
  const built = async (picks: string | undefined, ...flags: string[]) => {
    const folder = await scratch();
    const script = await put(folder, "yard.ts", scriptText("slipway"));
    if (picks !== undefined) await put(folder, "slipway.picks.json", picks);
    const host = listener();
    const out = join(folder, "out");
    const code = await run(["build", script, "--out", out, "--files", "svg", ...flags], host);
    const files = code === 0 ? await contents(join(out, "slipway")) : [];
    const inks = files
      .filter((file) => file.endsWith(".svg"))
      .map((file) => file.replace(/slipway-|\.svg/g, ""));
    return { code, inks, said: host.said(), told: host.told() };
  };
  const slate = '{ "colorways": ["slate"] }';

  it("writes what was picked, and says how many there are", async () => {
    const { inks, said } = await built(slate);
    expect(inks).toEqual(["slate"]);
    expect(said).toContain("1 of 2 colorways, as picked in slipway.picks.json; --all builds the rest");
  });

  it("writes all without picks, or with --all, and the named one with --colorway", async () => {
    expect((await built(undefined)).inks).toEqual(["chalk", "slate"]);
    const { inks, said } = await built(slate, "--all");
    expect(inks).toEqual(["chalk", "slate"]);
    expect(said).not.toContain("picks");
    expect((await built(slate, "--colorway", "chalk")).inks).toEqual(["chalk"]);
  });

  it("ends with 2 for picks that nobody planned, and for --all beside --colorway", async () => {
    const unknown = await built('{ "colorways": ["slat"] }');
    expect(unknown.code).toBe(2);
    expect(unknown.told).toContain('did you mean "slate"?');
    expect((await built(slate, "--all", "--colorway", "chalk")).code).toBe(2);
  });
});
