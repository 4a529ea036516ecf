import { build } from "esbuild";
import { getQuickJS } from "quickjs-emscripten";
import { expect, it } from "vitest";
import { palettesTold } from "./palettes.ts";

it("palettes, views, gamut and differences are the same in Node and in QuickJS, whose powers and roots are others", async () => {
  const here = palettesTold();
  expect(here.length).toBeGreaterThan(20_000);
  const { outputFiles } = await build({
    stdin: {
      contents: `import { palettesTold } from "./palettes.ts"; globalThis.told = palettesTold();`,
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
  context.unwrapResult(context.evalCode(outputFiles[0]!.text)).dispose();
  const told = context.getProp(context.global, "told");
  const there: unknown = context.dump(told);
  told.dispose();
  context.dispose();
  expect(there).toBe(here);
}, 60_000);
