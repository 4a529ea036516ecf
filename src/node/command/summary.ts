import type { Pattern } from "../../pattern/pattern.ts";
import { FILE_KINDS, formatOf } from "../write/formats/all.ts";
import type { WriteOptions } from "../write/options.ts";
import type { WrittenPattern } from "../write/write-pattern.ts";
import type { WrittenFile } from "../write/written.ts";
import { factsOf } from "./facts.ts";
import type { Style } from "./style.ts";
import { columns, sayBytes } from "./text.ts";

/** What was written, a line for each kind of file, and where it is. */
export function summary({ tile, settings, files, folder }: WrittenPattern, style: Style): string {
  const rows = [
    ...FILE_KINDS.map((kind) => row(kind, files, () => formatOf(kind).says(tile, settings))),
    row("recipe", files, () => "builds the same tile again"),
  ].filter((cells) => cells.length > 0);
  return [
    `${style.name(tile.name)}  ${style.quiet(factsOf(tile))}`,
    ...columns(rows, [1, 2]).map((line) => `  ${line}`),
    `  ${style.quiet("in")} ${style.good(folder)}`,
  ].join("\n");
}

/** What is odd about the files that were made. */
export async function warningsOf(
  { tile, settings, files }: WrittenPattern,
  { colorways }: Pattern,
  options: WriteOptions,
): Promise<readonly string[]> {
  const kinds = FILE_KINDS.filter((kind) => files.some((file) => file.kind === kind));
  const shown = (options.colorways ?? Object.keys(colorways)).map((name) => colorways[name]!);
  const said = kinds.map((kind) => formatOf(kind).warns?.(tile, shown, settings) ?? []);
  return (await Promise.all(said)).flat();
}

function row(kind: WrittenFile["kind"], all: readonly WrittenFile[], about: () => string): string[] {
  const files = all.filter((file) => file.kind === kind);
  if (files.length === 0) return [];
  const bytes = files.reduce((sum, file) => sum + file.bytes, 0);
  const kept = files.filter(({ unchanged }) => unchanged).length;
  const note = kept === 0 ? "" : kept === files.length ? " (as it was)" : ` (${kept} as they were)`;
  return [kind, String(files.length), sayBytes(bytes), about() + note];
}
