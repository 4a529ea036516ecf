// npm run sweep:stops: kills twenty builds at random moments and prints what came of it. Ends with 1 if anything broke.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { stopBuilds } from "./stops.ts";

const [command = join(import.meta.dirname, "../../dist/command.js"), times = "20", seed = "11"] =
  process.argv.slice(2);
const folder = mkdtempSync(join(tmpdir(), "sprigwright-stops-"));
const stops = await stopBuilds(command, folder, Number(times), Number(seed));
console.table(stops.map((stop) => ({ ...stop, broken: stop.broken.join(" ") })));
rmSync(folder, { recursive: true });
process.exitCode = stops.every(({ broken, finished, same }) => broken.length === 0 && finished && same)
  ? 0
  : 1;
