import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { brick, diamond, drop, hexagonal, ogee, planeGroup, skew, turnover } from "../../src/index.ts";

const source = (file: string): string =>
  readFileSync(new URL(`../../src/repeat/${file}.ts`, import.meta.url), "utf8");

// What an editor shows on hover comes from comments, what describe() returns from the parameters: one text.
test.each([
  ["brick", brick, "define"],
  ["diamond", diamond, "lozenge"],
  ["drop", drop, "define"],
  ["hexagonal", hexagonal, "closing"],
  ["ogee", ogee, "lozenge"],
  ["plane-group", planeGroup, "closing"],
  ["skew", skew, "vector"],
  ["turnover", turnover, "define"],
] as const)("%s says on hover what it says to programs", (name, { piece }, shared) => {
  const text = `${source(name)}\n${source(shared)}`;
  for (const [param, { schema }] of Object.entries(piece.params)) {
    const comment = new RegExp(`/\\*\\* (.*?) \\*/\\n  readonly ${param}:`).exec(text)?.[1] ?? "";
    const told = String(schema["description"]).replace(/\.$/, "");
    expect(comment.slice(0, told.length), `${name} > ${param}`).toBe(told);
    expect(comment).toMatch(/\d+.* to |default/i);
  }
});
