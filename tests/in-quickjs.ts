import { build } from "esbuild";
import { getQuickJS } from "quickjs-emscripten";

/** What paper looks for at load in an engine that is neither a browser nor Node. */
const STUBS = `globalThis.self = globalThis; globalThis.navigator = { userAgent: "" }; globalThis.setInterval = () => 0;`;

/**
 * What an expression comes to in QuickJS, an engine with other mathematics than V8's and no timers; if it is a promise, what
 * that comes to. `before` stands in front of it: imports, from `directory`, and whatever else it needs. An error comes back
 * as its text.
 */
export async function inQuickJs(before: string, expression: string, directory: string): Promise<unknown> {
  const { outputFiles } = await build({
    stdin: {
      contents: `${before}
        Promise.resolve(${expression}).then(
          (told) => { globalThis.told = told; }, (error) => { globalThis.told = String(error) + error.stack; });`,
      resolveDir: directory,
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
  const there: unknown = context.dump(told);
  told.dispose();
  // The context is not disposed of: that trips an assertion in this build of QuickJS once paper was loaded.
  return there;
}
