import type { Finding, Report } from "../../check/finding.ts";
import { type InspectOptions, inspect as inspectTile, type Surface } from "../../check/inspect.ts";
import { sayFinding } from "../../check/wording.ts";
import { unknownName } from "../../errors/catalogue.ts";
import { buildTile } from "../../tile/build.ts";
import type { Tile } from "../../tile/tile.ts";
import { type Arguments, dpiOf, single } from "./arguments.ts";
import { factsOf } from "./facts.ts";
import { gather } from "./gather.ts";
import { EXIT, type Host } from "./host.ts";
import { progressOf } from "./progress.ts";
import { type Style, styleFor, widthOf } from "./style.ts";
import { count, hang } from "./text.ts";

/** `sprigwright inspect`: builds every pattern, writes nothing, and says what a print might suffer from. */
export async function inspect({ names, flags }: Arguments, host: Host): Promise<number> {
  const surface = readSurface(single(flags, "surface"));
  const dpi = dpiOf(flags, "inspect");
  const options: InspectOptions = { ...(surface ? { surface } : {}), ...(dpi ? { dpi } : {}) };
  const { patterns } = await gather(names, flags.get("plugin") ?? []);
  const style = styleFor(host.out, host.env);
  let sound = true;
  for (const [i, pattern] of patterns.entries()) {
    const progress = progressOf(pattern.name, host);
    let tile: Tile;
    try {
      const onProgress = (done: number): void => progress.show({ stage: "tile", done });
      tile = await buildTile(pattern, { signal: host.signal, onProgress });
    } finally {
      progress.clear();
    }
    const report = inspectTile(tile, options);
    sound &&= report.ok;
    host.out.write(`${i > 0 ? "\n" : ""}${say(tile, report, style, widthOf(host.out))}\n`);
  }
  return sound ? EXIT.done : EXIT.faults;
}

/** Known here too, so that a slip is refused before anything is built. */
const SURFACES: Readonly<Record<Surface, true>> = { fabric: true, wallpaper: true, paper: true };

function readSurface(given: string | undefined): Surface | undefined {
  if (given === undefined || Object.hasOwn(SURFACES, given)) return given as Surface | undefined;
  throw unknownName("inspect > --surface", "surface", given, Object.keys(SURFACES));
}

function say(tile: Tile, { findings }: Report, style: Style, width: number): string {
  const faults = findings.filter(({ severity }) => severity === "fault");
  const warnings = findings.length - faults.length;
  const verdict =
    findings.length === 0
      ? style.good("nothing found")
      : [
          faults.length > 0 ? style.fault(count(faults.length, "fault")) : style.good("no fault"),
          ...(warnings > 0 ? [style.warning(count(warnings, "warning"))] : []),
        ].join(", ");
  return [
    `${style.name(tile.name)}  ${style.quiet(factsOf(tile))}`,
    `  ${verdict}`,
    ...findings.map((finding) => `  ${paintedFinding(finding, style, width)}`),
  ].join("\n");
}

function paintedFinding(finding: Finding, style: Style, width: number): string {
  const { severity } = finding;
  const said = hang(sayFinding(finding), 4, width);
  const paint = severity === "fault" ? style.fault : style.warning;
  return said.startsWith(severity) ? paint(severity) + said.slice(severity.length) : said;
}
