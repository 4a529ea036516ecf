import { build } from "esbuild";
import { getQuickJS } from "quickjs-emscripten";
import { expect, it } from "vitest";
import { answer } from "./two-pages.ts";

it("pages are the same bytes in another engine: QuickJS, which has neither V8's mathematics nor any timer", async () => {
  const { outputFiles } = await build({
    stdin: {
      contents: `import { answer } from "./two-pages.ts";
        answer().then((told) => { globalThis.told = told; }, (error) => { globalThis.told = String(error.stack ?? error); });`,
      resolveDir: import.meta.dirname,
      loader: "ts",
    },
    bundle: true,
    write: false,
    format: "iife",
    target: "es2020",
    platform: "browser",
  });
  const context = (await getQuickJS()).newContext();
  // What paper looks for at load.
  const stubs = `globalThis.self = globalThis; globalThis.navigator = { userAgent: "" }; globalThis.setInterval = () => 0;`;
  context.unwrapResult(context.evalCode(stubs + outputFiles[0]!.text)).dispose();
  context.unwrapResult(context.runtime.executePendingJobs());
  const told = context.getProp(context.global, "told");
  const there = context.dump(told);
  told.dispose();
  expect(there).toBe(await answer());
}, 60_000);
