import { build } from "esbuild";
import { getQuickJS } from "quickjs-emscripten";
import { expect, it } from "vitest";
import { drawings } from "./engines-drawings.ts";

/** What paper looks for at load in an engine that is neither a browser nor Node. */
const STUBS = `globalThis.self = globalThis; globalThis.navigator = { userAgent: "" }; globalThis.setInterval = () => 0;`;
/** Drawings that between them offset, cut, intersect and fit. */
const NAMES = ["anchor", "quatrefoil", "strawberry", "tulip", "wave"];

it("knock-outs, offsets and fitted curves come out the same in Node and in QuickJS, an engine with other mathematics", async () => {
  const here = drawings(NAMES);
  const { outputFiles } = await build({
    stdin: {
      contents: `import { drawings } from "./engines-drawings.ts"; globalThis.told = drawings(${JSON.stringify(NAMES)});`,
      resolveDir: new URL(".", import.meta.url).pathname,
      loader: "ts",
    },
    bundle: true,
    write: false,
    minify: true,
    format: "iife",
    target: "es2020",
    platform: "browser",
  });
  const context = (await getQuickJS()).newContext();
  context.unwrapResult(context.evalCode(STUBS + outputFiles[0]!.text)).dispose();
  const told = context.getProp(context.global, "told");
  const there = context.dump(told) as string;
  told.dispose();
  expect(there).toBe(here);
  expect(here.length).toBeGreaterThan(10_000);
}, 60_000);
