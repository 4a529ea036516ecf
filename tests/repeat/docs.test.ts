// What docs/repeats.md says is what the library does.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as sprigwright from "../../src/index.ts";
import { type Fitted, type RepeatUse, straightEquivalent } from "../../src/index.ts";

const page = readFileSync(new URL("../../docs/repeats.md", import.meta.url), "utf8");
const rows = page.split("\n").map((line) => line.split("|").map((cell) => cell.trim()));
const names = Object.keys(sprigwright);
const run = <T>(code: string): T =>
  new Function(...names, `return ${code.replace(/`/g, "")}`)(...Object.values(sprigwright)) as T;
const said = (width: number, height: number): string => `${width} × ${height} mm`;

describe("docs/repeats.md", () => {
  it("shows pictures that are there", () => {
    const pictures = [...page.matchAll(/(?:\]\(|src=")(pictures\/[^)"]+)/g)].map((match) => match[1]!);
    expect(pictures.length).toBeGreaterThan(15);
    for (const picture of pictures)
      expect(readFileSync(new URL(`../../docs/${picture}`, import.meta.url)).length).toBeGreaterThan(1000);
  });

  const equivalents = rows.filter(
    (cells) => cells.length === 6 && /^`\w+\(\{/.test(cells[1]!) && !/fitTo/.test(cells[1]!),
  );
  it.each(equivalents.map((cells) => cells.slice(1, 5)))("%s is %s straight", (code, block, units, bare) => {
    const equivalent = straightEquivalent(run<RepeatUse>(code!));
    expect(block).toBe(said(equivalent.block.width, equivalent.block.height));
    expect(Number(units)).toBe(equivalent.units);
    const { width, height, step, by } = equivalent.bare;
    expect(bare).toBe(`${said(width, height)}, ${step}${by === 0 ? "" : ` ${by} mm`}`);
  });

  const fits = rows.filter((cells) => cells[1]?.startsWith("`fitTo("));
  it.each(fits.map((cells) => cells.slice(1, 5)))(
    "%s has a block of %s",
    (code, block, times, distortion) => {
      const { to, repeats, distortion: bent } = run<Fitted>(code!);
      expect(block).toBe(said(to.width / 1000, to.height / 1000));
      expect([repeats, bent]).toEqual([Number(times), Number(distortion)]);
    },
  );

  it("speaks of every repeat that is exported", () => {
    expect(equivalents).toHaveLength(12);
    expect(fits).toHaveLength(3);
    expect(page).toContain("planeGroup({");
  });
});
