import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import * as primitives from "../../../src/motif/primitives/index.ts";

const folder = new URL("../../../src/motif/primitives/", import.meta.url);

// What an editor shows on hover comes from comments, what describe() returns from the parameters: one text.
test.each(Object.entries(primitives))("%s says on hover what it says to programs", (name, { piece }) => {
  const file = readdirSync(folder).find((f) => f === `${name}.ts`)!;
  const source = readFileSync(new URL(file, folder), "utf8");
  for (const [param, { schema }] of Object.entries(piece.params)) {
    const comment = new RegExp(`/\\*\\* (.*?) \\*/\\n  readonly ${param}:`).exec(source)?.[1];
    expect(comment?.startsWith(String(schema["description"])), `${name} > ${param}`).toBe(true);
    expect(comment).toMatch(/\d+ to \d+|default/i);
  }
});
