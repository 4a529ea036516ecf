import { badInput } from "../../errors/catalogue.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import type { Length } from "../../units/length.ts";
import { allCores, openWorkshop, type Workshop } from "../pool/workshop.ts";
import { FILE_KINDS, type FileKind } from "../write/formats/all.ts";
import { readWriteOptions, type WriteOptions, type WriteProgress } from "../write/options.ts";
import { type WrittenPattern, writeAll } from "../write/write-pattern.ts";
import { ahead } from "./ahead.ts";
import { type Arguments, dpiOf, single } from "./arguments.ts";
import { chosenColorways } from "./chosen.ts";
import { cutOf } from "./cut-of.ts";
import { gather } from "./gather.ts";
import { EXIT, type Host } from "./host.ts";
import { progressOf } from "./progress.ts";
import { isTerminal, styleFor } from "./style.ts";
import { summary, warningsOf } from "./summary.ts";
import { count, sayBytes } from "./text.ts";

/** Most patterns under way at once. */
const MOST_AHEAD = 3;

/** `sprigwright build`: writes the files of every pattern. */
export async function build(given: Arguments, host: Host): Promise<number> {
  const { names, flags } = given;
  const { out: sink } = host;
  const options = optionsOf(flags);
  const { patterns, leftAside, files: scripts } = await gather(names, flags.get("plugin") ?? []);
  // Everything is checked before the first is built.
  const jobs: { readonly pattern: Pattern; readonly options: WriteOptions }[] = [];
  for (const pattern of patterns) {
    const colorways = await chosenColorways(given, pattern, scripts.get(pattern.name)!);
    const job = { pattern, options: { ...options, colorways } };
    readWriteOptions(pattern, job.options);
    jobs.push(job);
  }
  host.heed();
  const style = styleFor(sink, host.env);
  const lines = !isTerminal(sink, host.env);
  let files = 0;
  let bytes = 0;
  const workers = options.workers ?? allCores();
  const workshop = await openWorkshop(workers);
  let turn = 0;
  // While threads make one pattern's files, the next is laid out; a terminal has room for one of them.
  const results = ahead(jobs, workers > 1 ? MOST_AHEAD : 1, (job, ready, off) => {
    const show = (): boolean => lines || jobs[turn] === job;
    return buildOne(job.pattern, job.options, workshop, host, { ready, off, show });
  });
  try {
    for (let i = 0; i < jobs.length; i++) {
      turn = i;
      const { pattern, options } = jobs[i]!;
      const written = (await results.next()).value as WrittenPattern;
      for (const { file, unchanged } of lines ? written.files : [])
        sink.write(`${unchanged ? "kept" : "wrote"} ${file}\n`);
      sink.write(`${i > 0 && !lines ? "\n" : ""}${summary(written, style)}\n`);
      for (const warning of await warningsOf(written, pattern, options))
        sink.write(`  ${style.warning("warning")}  ${warning}\n`);
      if (!flags.has("colorway") && options.colorways)
        sink.write(`  ${style.quiet(sayPicks(options.colorways.length, pattern))}\n`);
      files += written.files.length;
      bytes += written.files.reduce((sum, file) => sum + file.bytes, 0);
    }
  } finally {
    await workshop.close();
  }
  for (const file of leftAside) sink.write(style.quiet(`\nleft aside ${file}: it exports no pattern`));
  if (leftAside.length > 0) sink.write("\n");
  if (patterns.length > 1)
    sink.write(
      `\n${style.good(`${count(patterns.length, "pattern")}, ${count(files, "file")}, ${sayBytes(bytes)}`)}\n`,
    );
  return EXIT.done;
}

/** So that nobody wonders where the others are. */
const sayPicks = (picked: number, { name, colorways }: Pattern): string =>
  `${picked} of ${count(Object.keys(colorways).length, "colorway")}, as picked in ${name}.picks.json; --all builds the rest`;

function optionsOf(flags: Arguments["flags"]): WriteOptions {
  const kinds = flags.get("files")?.flatMap((given) => given.split(",").filter(Boolean));
  const cut = single(flags, "cut");
  const bleed = single(flags, "bleed");
  return {
    out: single(flags, "out") ?? "out",
    dpi: dpiOf(flags, "build"),
    files: kinds?.flatMap((kind) => (kind === "all" ? FILE_KINDS : [kind as FileKind])),
    cut: cut === undefined ? undefined : cutOf(cut),
    bleed: bleed === undefined ? undefined : ((/^[\d.]+$/.test(bleed) ? Number(bleed) : bleed) as Length),
    color: flags.has("truecolor") ? "truecolor" : undefined,
    layers: flags.has("knock-out") ? "knocked-out" : undefined,
    rights: single(flags, "rights"),
    creator: single(flags, "creator"),
    recipe: !flags.has("no-recipe"),
    hero: flags.has("hero"),
    studio: single(flags, "studio"),
    workers: workersOf(flags),
  };
}

function workersOf(flags: Arguments["flags"]): number | undefined {
  const given = single(flags, "workers");
  if (given === undefined || /^[1-9]\d{0,2}$/.test(given))
    return given === undefined ? undefined : Number(given);
  throw badInput(
    "bad-argument",
    "build > --workers",
    `${JSON.stringify(given)} is not a number of threads`,
    "give a whole number from 1 to 256",
  );
}

async function buildOne(
  pattern: Pattern,
  options: WriteOptions,
  workshop: Workshop,
  host: Host,
  { ready, off, show }: { ready: () => void; off: AbortSignal; show: () => boolean },
): Promise<WrittenPattern> {
  const progress = progressOf(pattern.name, host);
  const onProgress = (step: WriteProgress): void => {
    if (show()) progress.show(step);
    if (step.stage === "files") ready();
  };
  try {
    const signal = AbortSignal.any([host.signal, off]);
    // What is ready is kept for another run when a person stops this one, not when another pattern fails.
    return await writeAll(pattern, { ...options, signal, onProgress }, workshop, () => host.signal.aborted);
  } finally {
    progress.clear();
  }
}
