import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  breaksOrder,
  circles,
  importsOf,
  inexact,
  linesOf,
  type Source,
  strayPackages,
  tooLong,
  usesNode,
  vagueFolders,
  worksAtLoad,
} from "./rules.ts";

const root = new URL("../../src/", import.meta.url);
const sources: Source[] = readdirSync(root, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts"))
  .sort()
  .map((file) => ({ file, text: readFileSync(new URL(file, root), "utf8") }));
const all = (rule: (source: Source) => string[]): string[] => sources.flatMap(rule);

describe("the source", () => {
  it("is there to be looked at", () => {
    expect(sources.length).toBeGreaterThan(60);
    expect(sources.flatMap(importsOf).length).toBeGreaterThan(200);
  });

  it("builds each stage on stages before it only", () => expect(all(breaksOrder)).toEqual([]));
  it("has no files that load each other in a circle", () => expect(circles(sources)).toEqual([]));
  it("has no circles among types either", () => expect(circles(sources, true)).toEqual([]));
  it("knows Node only in node and preview", () => expect(all(usesNode)).toEqual([]));
  it("keeps each package in the folder that needs it", () => expect(all(strayPackages)).toEqual([]));
  it("decides no byte by inexact mathematics or a clock", () => expect(all(inexact)).toEqual([]));
  it("has no folder or file with a vague name", () => expect(all(vagueFolders)).toEqual([]));
  it("does no work at load and exports by name", () => expect(all(worksAtLoad)).toEqual([]));

  it("is cut small: no file over 350 lines, nine in ten under 160, half of them under 60", () => {
    expect(all(tooLong)).toEqual([]);
    const lines = sources.map(linesOf).sort((a, b) => a - b);
    expect(lines[Math.floor(lines.length / 2)]).toBeLessThan(60);
    expect(lines[Math.floor(lines.length * 0.9)]).toBeLessThan(160);
  });
});

describe("each rule sees a planted fault, and passes what is sound", () => {
  const at = (file: string, text: string): Source => ({ file, text });

  it("order", () => {
    const bad = [
      at("layout/x.ts", 'import { straight } from "../repeat/straight.ts";'),
      at("layout/x.ts", 'import type { RepeatPiece } from "../repeat/repeat.ts";'),
      at("check/x.ts", 'import { toSvg } from "../output/svg/to-svg.ts";'),
      at("output/x.ts", 'export { inspect } from "../check/inspect.ts";'),
      at("tile/x.ts", 'const kit = await import("../plugin/kit.ts");'),
      at("geometry/x.ts", 'import { toss } from "../index.ts";'),
      at("brushes/x.ts", ""),
    ];
    for (const source of bad) expect(breaksOrder(source), source.text).toHaveLength(1);
    expect(
      breaksOrder(at("tile/x.ts", 'import { a } from "../repeat/a.ts";\nimport { b } from "./b.ts";')),
    ).toEqual([]);
    expect(breaksOrder(at("index.ts", 'export { a } from "./node/a.ts";'))).toEqual([]);
  });

  it("circles", () => {
    const ring = [
      at("a/x.ts", 'import { y } from "./y.ts";'),
      at("a/y.ts", 'import { z } from "../b/z.ts";'),
      at("b/z.ts", 'import { x } from "../a/x.ts";'),
    ];
    expect(circles(ring)).toEqual(["a/x.ts > a/y.ts > b/z.ts > a/x.ts"]);
    expect(circles(ring.slice(0, 2))).toEqual([]);
    const typed = [
      at("a.ts", 'import { type B } from "./b.ts";'),
      at("b.ts", 'import type { A } from "./a.ts";'),
    ];
    expect(circles(typed)).toEqual([]);
    expect(circles(typed, true)).toHaveLength(1);
  });

  it("Node", () => {
    for (const name of ["node:fs", "fs", "fs/promises", "crypto"]) {
      expect(usesNode(at("tile/x.ts", `import { x } from "${name}";`))).toHaveLength(1);
      expect(usesNode(at("node/x.ts", `import { x } from "${name}";`))).toEqual([]);
    }
  });

  it("packages", () => {
    expect(strayPackages(at("tile/x.ts", 'import paper from "paper/dist/paper-core.js";'))).toHaveLength(1);
    expect(strayPackages(at("motif/x.ts", 'import { Clipper } from "clipper2-ts";'))).toHaveLength(1);
    expect(strayPackages(at("seed/x.ts", 'import _ from "lodash";'))).toHaveLength(1);
    expect(strayPackages(at("tile/x.ts", 'import { sha256 } from "@noble/hashes/sha2.js";'))).toEqual([]);
  });

  it("mathematics and clocks", () => {
    const bad = [
      "Math.sin(1)",
      "Math.hypot(3, 4)",
      "Math.random()",
      "Math.atan2(y, x) * Math.PI",
      "Math[k](1)",
      "const { sin } = Math",
      "const m = Math",
      "f(Math)",
      "2 ** 3",
      "x **= 2",
      "Date.now()",
      "new Date()",
      "performance.now()",
      "globalThis.performance.now()",
      "crypto.getRandomValues(a)",
    ];
    for (const text of bad) expect(inexact(at("geometry/x.ts", text)), text).not.toEqual([]);
    const good = [
      "Math.sqrt(2) + Math.imul(3, 4) + Math.PI",
      "// Math.sin and 2 ** 3 in words",
      '"Math.random()"',
      "x.performance",
      "const o = { Date: 1 }",
      "tools.math.sin(0.25)",
    ];
    for (const text of good) expect(inexact(at("geometry/x.ts", text)), text).toEqual([]);
    expect(inexact(at("node/x.ts", "performance.now()"))).toEqual([]);
  });

  it("names, sizes and loading", () => {
    expect(vagueFolders(at("geometry/utils/x.ts", ""))).toHaveLength(1);
    expect(vagueFolders(at("geometry/helpers.ts", ""))).toHaveLength(1);
    expect(vagueFolders(at("geometry/lattice.ts", ""))).toEqual([]);
    expect(tooLong(at("x.ts", "\n".repeat(351)))).toHaveLength(1);
    expect(tooLong(at("x.ts", "\n".repeat(350)))).toEqual([]);
    expect(worksAtLoad(at("x.ts", "export default 1;"))).toHaveLength(1);
    expect(worksAtLoad(at("x.ts", "register();"))).toHaveLength(1);
    expect(worksAtLoad(at("x.ts", "export const a = 1;"))).toEqual([]);
  });
});
