import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inspectTrace } from "../../../../src/motif/artwork/trace/inspect-trace.ts";
import { LONGEST_SIDE, MOST_PIXELS } from "../../../../src/motif/artwork/trace/png/header.ts";
import { rendered, sheetOf } from "./painted.ts";

const page = readFileSync(new URL("../../../../docs/artwork.md", import.meta.url), "utf8");
const section = page.slice(page.indexOf("## Scans"), page.indexOf("## Before you sell"));

describe("docs/artwork.md on scans", () => {
  it("names every field of the report and every option", () => {
    const report = inspectTrace(rendered(sheetOf('<circle cx="50" cy="50" r="30"/>'), 60));
    const source = readFileSync(
      new URL("../../../../src/motif/artwork/trace/options.ts", import.meta.url),
      "utf8",
    );
    const options = Array.from(source.matchAll(/^ {2}readonly (\w+)\?:/gm), (match) => match[1]!);
    expect(options).toHaveLength(9);
    for (const name of [...Object.keys(report), ...options]) expect(section, name).toContain(`\`${name}\``);
  });

  it("gives the limits that are kept", () => {
    expect(section).toContain(`${MOST_PIXELS / 1e6} million pixels`);
    expect(section).toContain(`${LONGEST_SIDE} a side`);
  });
});
