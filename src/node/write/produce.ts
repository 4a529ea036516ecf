import { join, resolve } from "node:path";
import { cutSize } from "../../output/cut.ts";
import type { Pattern } from "../../pattern/pattern.ts";
import { arrangementOf } from "../../repeat/arrangement.ts";
import { buildTile } from "../../tile/build.ts";
import type { Tile } from "../../tile/tile.ts";
import type { Workshop } from "../pool/workshop.ts";
import { type FileKind, formatOf } from "./formats/all.ts";
import type { OtherFile, Settings } from "./formats/format.ts";
import { earlierFiles, type Task, tasksFor } from "./jobs.ts";
import { MANIFEST } from "./manifest.ts";
import type { WritePlan } from "./options.ts";
import { ownFiles } from "./own-files.ts";
import type { Staging } from "./staging.ts";
import { LAID_OUT, workbench } from "./workbench.ts";
import type { WrittenFile } from "./written.ts";

/** A pattern's files, with the tile they show. */
export interface Production {
  readonly tile: Tile;
  readonly settings: Settings;
  readonly files: readonly WrittenFile[];
}

/** Builds the tile once, makes what is not there already, and moves all of it to its place. */
export async function produce(
  pattern: Pattern,
  plan: WritePlan,
  folder: string,
  staging: Staging,
  workshop: Workshop,
): Promise<Production> {
  const { kinds, settings, signal, onProgress } = plan;
  const arrangement = arrangementOf(pattern.repeat);
  const outline = { name: pattern.name, block: arrangement.lattice.block, arrangement };
  cutSize(outline, settings.cut, "writePattern > cut");
  // A scaled tile is another size, known when it is built.
  for (const kind of pattern.scale === undefined ? kinds : [])
    await formatOf(kind).check?.(outline, settings);
  const report = (done: number): void => onProgress({ stage: "tile", done: done * LAID_OUT });
  const tile = await buildTile(pattern, { signal, onProgress: report });
  for (const kind of pattern.scale === undefined ? [] : kinds) await formatOf(kind).check?.(tile, settings);
  const colorways = plan.colorways.map((name) => pattern.colorways[name]!);
  const earlier = await earlierFiles(resolve(folder), staging.leftovers);
  const bench = workbench(tile, plan, folder, staging, workshop, earlier);
  const isLast = (kind: FileKind): boolean => formatOf(kind).last === true;
  const tasks = (some: readonly FileKind[], others: readonly OtherFile[]): Task[] =>
    tasksFor(tile, colorways, some, settings, others);
  const [usual, last] = [kinds.filter((kind) => !isLast(kind)), kinds.filter(isLast)];
  const made = await bench.makeAll(tasks(usual, []), 0, last.length > 0 ? 0.95 : 1);
  const others = made
    .map(({ entry: { file, colorway } }) => ({ file, colorway }))
    .sort((a, b) => (a.file < b.file ? -1 : 1));
  made.push(...(await bench.makeAll(tasks(last, others), 0.95, 1)));
  const own = await ownFiles(tile, made, folder, staging);
  const all = [...made, ...own];
  onProgress({ stage: "files", done: 1, file: join(folder, MANIFEST) });
  signal?.throwIfAborted();
  await staging.publish(all.filter(({ unchanged }) => !unchanged).map(({ entry }) => entry.file));
  const files = all.map(({ entry: { file, bytes, sha256: digest, kind, colorway }, unchanged }) => ({
    file: join(folder, file),
    bytes,
    sha256: digest,
    kind: kind as WrittenFile["kind"],
    ...(colorway === undefined ? {} : { colorway }),
    unchanged,
  }));
  return { tile, settings, files };
}
