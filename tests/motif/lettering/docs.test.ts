// What docs/lettering.md says is what the library does.
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import decompress from "woff2-encoder/decompress";
import * as sprigwright from "../../../src/index.ts";
import * as door from "../../../src/lettering.ts";
import type { MotifUse } from "../../../src/motif/motif.ts";
import { fontFile } from "./both.ts";
import { drawn } from "./drawn.ts";

const page = readFileSync(new URL("../../../docs/lettering.md", import.meta.url), "utf8");
const code = [...page.matchAll(/```ts\n([\s\S]*?)```/g)].map((match) => match[1]!);

it("every example runs, one after the other, and draws", async () => {
  const scope: Record<string, unknown> = {
    ...sprigwright,
    ...door,
    decompress,
    readFileSync: (name: string) =>
      fontFile("eb-garamond", name.endsWith("2") ? "eb-garamond-latin-400-normal.woff2" : undefined),
  };
  const names = [...code.join("").matchAll(/^const (?:\[([^\]]+)\]|(\w+))/gm)].flatMap((m) =>
    (m[1] ?? m[2]!).split(", "),
  );
  const body = code.join("\n").replace(/^import .*$/gm, "");
  const run = new Function(
    ...Object.keys(scope),
    `return (async () => { ${body}; return { ${names.join(", ")} }; })()`,
  );
  const made = (await run(...Object.values(scope))) as Record<string, MotifUse>;
  for (const name of ["title", "block", "sign", "above", "below", "wave", "woven", "stately"])
    expect(drawn(made[name]!).outline.contours.length, name).toBeGreaterThan(1);
  expect(made["layout"]).toMatchObject({ use: "sprigwright/toss" });
});

it("speaks of every function and option, with the defaults that hold", () => {
  for (const name of Object.keys(door).filter((name) => !/Motif$/.test(name))) expect(page).toContain(name);
  const { params, roles } = door.lettering(door.loadFont(fontFile("roboto")), "Quay");
  expect(params["size"]).toBe(20);
  expect(roles).toEqual({ letter: "letter" });
});
