import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inspectArtwork } from "../../../src/motif/artwork/inspect.ts";
import { LIMITS } from "../../../src/motif/artwork/limits.ts";
import { svgOf } from "./picture.ts";

const page = readFileSync(new URL("../../../docs/artwork.md", import.meta.url), "utf8");

describe("docs/artwork.md", () => {
  it("gives the limits that are kept", () => {
    for (const limit of [LIMITS.characters, LIMITS.elements, LIMITS.depth, LIMITS.points])
      expect(page).toMatch(new RegExp(`\\b${limit}\\b`));
  });

  it("names every field of the report, and every reason to leave a shape out", () => {
    const { width: _, height: __, ...fields } = inspectArtwork(svgOf('<rect width="9" height="9"/>'));
    for (const field of Object.keys(fields)) expect(page).toContain(`| \`${field}\` |`);
    const source = readFileSync(new URL("../../../src/motif/artwork/report.ts", import.meta.url), "utf8");
    const reasons = /why:([^;]*);/.exec(source)![1]!.match(/"[\w-]+"/g)!;
    expect(reasons).toHaveLength(8);
    for (const reason of reasons) expect(page).toContain(`\`${reason.slice(1, -1)}\``);
  });
});
