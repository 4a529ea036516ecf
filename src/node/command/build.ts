import type { Pattern } from "../../pattern/pattern.ts";
import type { PictureKind } from "../write/options.ts";
import { readWriteOptions } from "../write/options.ts";
import { type WrittenPattern, writeAll } from "../write/write-pattern.ts";
import type { WrittenFile } from "../write/written.ts";
import { type Arguments, dpiOf, single } from "./arguments.ts";
import { factsOf } from "./facts.ts";
import { gather } from "./gather.ts";
import { EXIT, type Host } from "./host.ts";
import { progressOf } from "./progress.ts";
import { isTerminal, type Style, styleFor } from "./style.ts";
import { columns, count, sayBytes } from "./text.ts";

/** `sprigwright build`: writes the files of every pattern. */
export async function build({ names, flags }: Arguments, host: Host): Promise<number> {
  const { out: sink, signal } = host;
  const options = {
    out: single(flags, "out") ?? "out",
    dpi: dpiOf(flags, "build"),
    colorways: flags.get("colorway"),
    only: flags.get("only")?.flatMap((kinds) => kinds.split(",").filter(Boolean)) as
      | PictureKind[]
      | undefined,
    signal,
  };
  const { patterns, leftAside } = await gather(names, flags.get("plugin") ?? []);
  // Everything is checked before the first is built.
  for (const pattern of patterns) readWriteOptions(pattern, options);
  const style = styleFor(sink, host.env);
  const lines = !isTerminal(sink, host.env);
  let files = 0;
  let bytes = 0;
  for (const [i, pattern] of patterns.entries()) {
    const written = await buildOne(pattern, options, host);
    for (const { file } of lines ? written.files : []) sink.write(`wrote ${file}\n`);
    sink.write(`${i > 0 && !lines ? "\n" : ""}${summary(written, style)}\n`);
    files += written.files.length;
    bytes += written.files.reduce((sum, file) => sum + file.bytes, 0);
  }
  for (const file of leftAside) sink.write(style.quiet(`\nleft aside ${file}: it exports no pattern`));
  if (leftAside.length > 0) sink.write("\n");
  if (patterns.length > 1)
    sink.write(
      `\n${style.good(`${count(patterns.length, "pattern")}, ${count(files, "file")}, ${sayBytes(bytes)}`)}\n`,
    );
  return EXIT.done;
}

async function buildOne(
  pattern: Pattern,
  options: Parameters<typeof writeAll>[1],
  host: Host,
): Promise<WrittenPattern> {
  const progress = progressOf(pattern.name, host);
  try {
    return await writeAll(pattern, { ...options, onProgress: progress.show });
  } finally {
    progress.clear();
  }
}

/** What was written, a line for each kind of file, and where it is. */
function summary({ tile, print, field, files, folder }: WrittenPattern, style: Style): string {
  const rows = [
    row("svg", files, "one block, curves kept, a path a role"),
    row(
      "png",
      files,
      print ? `one block, ${print.width} x ${print.height} px at ${Math.round(print.dpi)} dpi` : "",
    ),
    row("field", files, field ? `the block repeated, ${field.width} x ${field.height} px` : ""),
    row("recipe", files, "builds the same tile again"),
  ].filter((cells) => cells.length > 0);
  return [
    `${style.name(tile.name)}  ${style.quiet(factsOf(tile))}`,
    ...columns(rows, [1, 2]).map((line) => `  ${line}`),
    `  ${style.quiet("in")} ${style.good(folder)}`,
  ].join("\n");
}

function row(kind: WrittenFile["kind"], all: readonly WrittenFile[], about: string): string[] {
  const files = all.filter((file) => file.kind === kind);
  if (files.length === 0) return [];
  const bytes = files.reduce((sum, file) => sum + file.bytes, 0);
  return [kind, String(files.length), sayBytes(bytes), about];
}
