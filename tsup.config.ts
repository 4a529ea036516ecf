import type { Plugin } from "esbuild";
import { defineConfig } from "tsup";

/**
 * One file out for each file in, so that a bundler leaves out what a program does not import (in one large file,
 * every definition at the top level would count as an effect), and stack traces can be read.
 */
const keepFiles: Plugin = {
  name: "keep-files",
  setup(build) {
    build.onResolve({ filter: /^\.{1,2}\// }, ({ path, kind }) =>
      kind === "entry-point" ? null : { path: path.replace(/\.ts$/, ".js"), external: true },
    );
  },
};

const doors = {
  index: "src/index.ts",
  artwork: "src/artwork.ts",
  lettering: "src/lettering.ts",
  print: "src/print.ts",
  proof: "src/proof.ts",
  sheets: "src/sheets.ts",
  node: "src/node.ts",
};

// `tsup --no-dts` leaves the types out: the demo runs the code alone, and types take most of the time.
export default defineConfig(({ dts }) => [
  {
    entry: ["src/**/*.ts", "!src/**/*.d.ts"],
    format: "esm",
    target: "es2022",
    platform: "neutral",
    splitting: false,
    treeshake: false,
    sourcemap: false,
    clean: true,
    silent: true,
    esbuildPlugins: [keepFiles],
  },
  ...(dts === false
    ? []
    : [{ entry: doors, format: "esm" as const, target: "es2022", dts: { only: true }, silent: true }]),
]);
