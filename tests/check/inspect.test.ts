import { beforeAll, describe, expect, it } from "vitest";
import { defineCheck } from "../../src/check/check.ts";
import type { Finding } from "../../src/check/finding.ts";
import { inspect } from "../../src/check/inspect.ts";
import { sayFinding } from "../../src/check/wording.ts";
import type { Colorway } from "../../src/colorway/colorway.ts";
import { toss } from "../../src/layout/toss.ts";
import { definePattern } from "../../src/pattern/pattern.ts";
import { straight } from "../../src/repeat/straight.ts";
import { buildTile } from "../../src/tile/build.ts";
import type { Tile } from "../../src/tile/tile.ts";
import { pebble, refusal } from "../given.ts";
import { stone, stones } from "../given-patterns.ts";

const tileOf = (width: string | number, height: string | number): Promise<Tile> =>
  buildTile(stones([stone("a", 9000, 9000)], straight({ width, height } as never)));
const colorway = (inks: object, name = "dawn"): Colorway => ({ name, inks }) as Colorway;
const good = colorway({ ground: "#f6ead7", pebble: "#3f6b4f" });

let tile: Tile;
beforeAll(async () => {
  tile = await tileOf("6.4in", "4.8in");
});

describe("inspect", () => {
  it("finds nothing in a sound tile, and looks at the pattern's own colorways by default", () => {
    expect(inspect(tile)).toEqual({ ok: true, findings: [] });
    expect(inspect(tile, { surface: "paper", colorways: [good] }).findings).toEqual([]);
    expect(Object.isFrozen(inspect(tile).findings)).toBe(true);
  });

  it("every role inked: finds the role that lacks one, in the colorway that lacks it", () => {
    const report = inspect(tile, { colorways: [good, colorway({ ground: "#ffffff" }, "dusk")] });
    expect(report.ok).toBe(false);
    expect(report.findings).toMatchObject([
      { rule: "every-role-inked", severity: "fault", role: "pebble", colorway: "dusk", measured: "none" },
    ]);
    const named = inspect(tile, { colorways: [colorway({ ground: "white", pebble: "#000000" })] });
    expect(named.findings.map(({ role, measured }) => [role, measured])).toContainEqual(["ground", "white"]);
    expect(named.ok).toBe(false);
  });

  it("whole pixels: finds the side that is not, and offers the nearest that are", async () => {
    const report = inspect(await tileOf(160, "4.8in"));
    expect(report.ok).toBe(false);
    expect(report.findings).toEqual([
      {
        rule: "whole-pixels",
        severity: "fault",
        measured: 944.882,
        limit: "a whole number",
        unit: "px across at 150 dpi",
        fix: "make the block's width 160.02 mm or 159.512 mm instead of 160 mm",
      },
    ]);
    expect(inspect(await tileOf("6.4in", 120), { surface: "paper" }).findings).toMatchObject([
      { rule: "whole-pixels", unit: "px down at 300 dpi" },
    ]);
    expect(inspect(await tileOf("6.4in", "4.8in"), { dpi: 7 }).findings).toHaveLength(2);
  });

  it("ink contrast: finds the ink that drowns in the ground, by the number of WCAG", () => {
    const faint = colorway({ ground: "#f6ead7", pebble: "#f0e4d0" });
    const report = inspect(tile, { colorways: [faint] });
    expect(report.ok).toBe(true);
    expect(report.findings).toMatchObject([
      {
        rule: "ink-contrast",
        severity: "warning",
        role: "pebble",
        limit: 1.15,
        unit: "to 1 against the ground",
      },
    ]);
    const [finding] = report.findings;
    expect(Number(finding!.measured)).toBeGreaterThan(1);
    expect(Number(finding!.measured)).toBeLessThan(1.15);
    expect(finding!.fix).toContain("(#f0e4d0)");
  });

  it("says a finding in one line", () => {
    const report = inspect(tile, { colorways: [colorway({ ground: "#ffffff" }, "dusk")] });
    expect(sayFinding(report.findings[0]!)).toBe(
      'fault: colorway dusk, role pebble: none where an ink #rrggbb is wanted; give "pebble" a colour in the colorway "dusk" [every-role-inked]',
    );
    const plain: Finding = {
      rule: "r",
      severity: "warning",
      measured: 1,
      limit: 2,
      unit: "mm",
      fix: "grow it",
    };
    expect(sayFinding(plain)).toBe("warning: 1 mm where 2 is wanted; grow it [r]");
  });

  it.each([
    [{ surface: "silk" }, 'inspect > surface: there is no surface "silk"'],
    [{ surface: "toString" }, "there is no surface"],
    [{ dpi: 0 }, "inspect > dpi: 0 dpi is outside 1 dpi to 2400 dpi"],
    [{ dpi: 2401 }, "2401 dpi is outside"],
    [{ dpi: 150.5 }, "inspect > dpi: 150.5 is not a whole number of dots per inch"],
    [{ dpi: "150" }, 'inspect > dpi: "150" is not a whole number'],
  ])("refuses %j", (options, message) => {
    expect(refusal(() => inspect(tile, options as never)).message).toContain(message);
  });
});

describe("a check of one's own", () => {
  const check = (look: (...args: never[]) => unknown) =>
    defineCheck({ name: "test/own", about: "Own.", look: look as never });

  it("runs after the built-in ones on the same tile, colorways and dpi", () => {
    let seen: unknown;
    const finding: Finding = { rule: "own", severity: "fault", measured: 1, limit: 2, unit: "", fix: "x" };
    const own = check((inspected: unknown) => {
      seen = inspected;
      return [finding];
    });
    const report = inspect(tile, { checks: [own], colorways: [good], dpi: 25 });
    expect(report.findings.at(-1)).toEqual(finding);
    expect(report.ok).toBe(false);
    expect(seen).toEqual({ tile, colorways: [good], dpi: 25 });
  });

  it("is named when it throws or returns nonsense", () => {
    const cause = new Error("dry");
    const thrower = check(() => {
      throw cause;
    });
    expect(refusal(() => inspect(tile, { checks: [thrower] }))).toMatchObject({
      code: "piece-failed",
      where: "inspect > test/own",
      cause,
    });
    expect(refusal(() => inspect(tile, { checks: [check(() => "fine")] })).message).toContain(
      'inspect > test/own: it returned "fine" where a list was wanted',
    );
    expect(
      refusal(() => inspect(tile, { checks: [check(() => [{ rule: "x", severity: "bad" }])] })).code,
    ).toBe("bad-finding");
  });
});

describe("coverage that was asked for", () => {
  const covered = async (coverage: number) => {
    const layout = toss({ coverage, gap: 2, motifs: [{ motif: pebble({ size: 9 }) }] });
    const colorways = { plain: { ground: "white", pebble: "black" } };
    const pattern = definePattern({
      name: "covered",
      seed: "s",
      repeat: straight({ width: 60, height: 60 }),
      layout,
      colorways,
    });
    return inspect(await buildTile(pattern)).findings.filter(({ rule }) => rule === "short-of-coverage");
  };

  it("and is out of reach is told, and what is reached is not", async () => {
    expect(await covered(0.3)).toEqual([]);
    const [finding] = await covered(0.95);
    expect(finding).toMatchObject({ limit: 0.95, severity: "warning" });
    expect(finding!.measured).toBeLessThan(0.86);
  });
});
