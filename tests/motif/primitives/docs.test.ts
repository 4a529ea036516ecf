// docs/motifs.md shows the motifs as they are. To renew it: npm run pictures.
import { existsSync, readFileSync, statSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as sprigwright from "../../../src/index.ts";
import type { MotifUse } from "../../../src/motif/motif.ts";
import families from "../../../tools/motif-families.json" with { type: "json" };
import { all, drawn } from "./measure.ts";

const docs = new URL("../../../docs/", import.meta.url);
const page = readFileSync(new URL("motifs.md", docs), "utf8");
const cells = (line: string): string[] =>
  line
    .split("|")
    .slice(1, -1)
    .map((cell) => cell.trim());

/** What stands under a heading, up to the next of its level or a higher one. */
function under(heading: string): string {
  const from = page.indexOf(`\n${heading}\n`);
  if (from < 0) throw new Error(`docs/motifs.md has no "${heading}": run npm run pictures`);
  const rest = page.slice(from + heading.length + 2);
  const next = new RegExp(`^#{1,${heading.indexOf(" ")}} `, "m").exec(rest);
  return `\n${rest.slice(0, next?.index)}`;
}

describe("docs/motifs.md", () => {
  it("has the families in order, and in each its motifs", () => {
    const headings = [...page.matchAll(/^(##|###) (.*)$/gm)].map(([, level, name]) => `${level} ${name}`);
    const wanted = Object.entries(families).flatMap(([family, names]) => [
      `## ${family}`,
      ...names.map((name) => `### ${name}`),
    ]);
    expect(headings).toEqual([...wanted, "## Drawing your own"]);
  });

  it.each(all)("says of %s what the motif says of itself", (name, { piece }) => {
    const section = under(`### ${name}`);
    expect(section).toContain(`\n${piece.about}\n`);
    expect(section).toContain(
      `Parts, back to front: ${(piece.parts as string[]).map((p) => `\`${p}\``).join(", ")}.`,
    );
    const rows = section
      .split("\n")
      .filter((line) => line.startsWith("| `"))
      .map(cells);
    expect(rows.map((row) => row[0])).toEqual(Object.keys(piece.params).map((key) => `\`${key}\``));
    Object.values(piece.params).forEach(({ schema }, k) => {
      const [, what, range, standard] = rows[k]!;
      expect(what).toBe(schema["description"]);
      const of = (schema["anyOf"] as Record<string, unknown>[] | undefined)?.[0] ?? schema;
      if ("minimum" in of) expect(range).toMatch(`${of["minimum"]} to ${of["maximum"]}`);
      else for (const one of schema["enum"] as string[]) expect(range).toContain(one);
      expect(standard).toContain(String(schema["default"]));
    });
  });

  it("shows pictures that are there", () => {
    const pictures = [...page.matchAll(/\]\((pictures\/motifs\/[^)]+)\)/g)].map((match) => match[1]!);
    expect(pictures).toEqual(expect.arrayContaining(all.map(([name]) => `pictures/motifs/${name}.png`)));
    for (const picture of pictures) {
      expect(existsSync(new URL(picture, docs)), picture).toBe(true);
      expect(statSync(new URL(picture, docs)).size, picture).toBeGreaterThan(500);
    }
  });

  it("names every builder, and no other", () => {
    const section = under("## Drawing your own");
    const named = section
      .split("\n")
      .filter((line) => line.startsWith("| `"))
      .flatMap((line) => [...cells(line)[0]!.matchAll(/`(\w+)`/g)].map((match) => match[1]!));
    expect(named.sort()).toEqual(Object.keys(sprigwright.shapes).sort());
  });

  it("has an example that draws", () => {
    const code = /```js\n([\s\S]*?)```/.exec(page)![1]!;
    const names = Object.keys(sprigwright);
    const posy = new Function(...names, `${code}\nreturn posy;`)(
      ...Object.values(sprigwright),
    ) as () => MotifUse;
    expect(drawn(posy()).shapes.map(({ role }) => role)).toEqual(["stem", "leaf", "petal", "centre"]);
  });
});
