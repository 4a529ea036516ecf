// npm run bench: bundles each bench as users bundle the library (a loader that rewrites imports slows calls between
// files), runs it, and prints its table. The machine should be doing nothing else.
import { execFileSync } from "node:child_process";
import { rmSync } from "node:fs";
import { build } from "esbuild";

const [only] = process.argv.slice(2);
for (const name of ["raster", "packing", "colorways"].filter((bench) => !only || bench === only)) {
  const outfile = `tests/bench/.${name}.mjs`;
  try {
    await build({
      entryPoints: [`tests/bench/${name}.ts`],
      outfile,
      bundle: true,
      platform: "node",
      format: "esm",
      packages: "external",
      logLevel: "error",
    });
    console.log(`\n${name}`);
    execFileSync(process.execPath, ["--expose-gc", outfile], { stdio: "inherit" });
  } finally {
    rmSync(outfile, { force: true });
  }
}
