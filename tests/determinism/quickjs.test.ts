import { build } from "esbuild";
import { getQuickJS } from "quickjs-emscripten";
import { expect, it } from "vitest";
import { answer } from "./harbour.ts";

/** What paper looks for at load in an engine that is neither a browser nor Node. */
const STUBS = `globalThis.self = globalThis; globalThis.navigator = { userAgent: "" }; globalThis.setInterval = () => 0;`;

it("a whole job gives the same digest, SVG and PNG in Node and in QuickJS, an engine with other mathematics and no timers", async () => {
  const here = await answer();
  const { outputFiles } = await build({
    stdin: {
      contents: `import { answer } from "./harbour.ts";
          answer().then((told) => { globalThis.told = told; }, (error) => { globalThis.told = String(error) + error.stack; });`,
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
  context.unwrapResult(context.runtime.executePendingJobs());
  const told = context.getProp(context.global, "told");
  const there = context.dump(told);
  told.dispose();
  expect(there).toBe(here);
  // The context is not disposed of: that trips an assertion in this build of QuickJS once paper was loaded.
}, 180_000);
