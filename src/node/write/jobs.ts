import { rename } from "node:fs/promises";
import { join } from "node:path";
import type { Colorway } from "../../colorway/colorway.ts";
import type { Tile } from "../../tile/tile.ts";
import { VERSION } from "../../tile/version.ts";
import { type FileKind, formatOf } from "./formats/all.ts";
import type { OtherFile, Settings } from "./formats/format.ts";
import { type MadeFile, sha256 } from "./job.ts";
import { isRight, type ManifestEntry, readManifest } from "./manifest.ts";

/** Files that are made together, and the digest of all that they are made from. */
export interface Task {
  readonly kind: FileKind;
  readonly colorways: readonly Colorway[];
  readonly others: readonly OtherFile[];
  readonly from: string;
}

/** What has to be made of a tile: of each of `kinds` the colorways together where they share work, else one by one. */
export function tasksFor(
  tile: Tile,
  colorways: readonly Colorway[],
  kinds: readonly FileKind[],
  settings: Settings,
  others: readonly OtherFile[],
): Task[] {
  return kinds.flatMap((kind) => {
    const sets = formatOf(kind).together ? [colorways] : colorways.map((colorway) => [colorway]);
    return sets.map((set) => {
      const inks = set.map((colorway) => [colorway.name, colorway.inks]);
      const all = [VERSION, tile.digest, tile.recipe, kind, inks, settings, others];
      return { kind, colorways: set, others, from: sha256(JSON.stringify(all)) };
    });
  });
}

/** Entries of a manifest for the files of a task. */
export const entriesOf = ({ kind, from }: Task, made: readonly MadeFile[]): ManifestEntry[] =>
  made.map(({ file, colorway, bytes, sha256: digest }) => ({
    file,
    kind,
    ...(colorway === undefined ? {} : { colorway }),
    bytes,
    sha256: digest,
    from,
  }));

/** Files of earlier runs, those that were stopped included. */
export interface Earlier {
  /**
   * The files of a task, when every one of them is there with the right bytes; those of a stopped run are moved to
   * `hidden`. Else undefined.
   */
  find(
    task: Task,
    hidden: string,
  ): Promise<{ entries: readonly ManifestEntry[]; inPlace: ReadonlySet<string> } | undefined>;
}

/** Looks through the manifests of a folder and of what stopped runs left. */
export async function earlierFiles(folder: string, leftovers: readonly string[]): Promise<Earlier> {
  const places = [folder, ...leftovers];
  const manifests = await Promise.all(places.map(readManifest));
  return {
    async find({ from }, hidden) {
      for (const manifest of manifests) {
        const entries = manifest?.files.filter((entry) => entry.from === from) ?? [];
        if (entries.length === 0) continue;
        const found = await Promise.all(entries.map((entry) => placeOf(entry, places)));
        if (found.includes(undefined)) continue;
        for (const [i, { file }] of entries.entries())
          if (found[i] !== folder) await rename(join(found[i]!, file), join(hidden, file));
        return {
          entries,
          inPlace: new Set(entries.filter((_, i) => found[i] === folder).map(({ file }) => file)),
        };
      }
      return undefined;
    },
  };
}

/** The first of the places where a file is right. A run writes a task's entries when all its files are whole. */
async function placeOf(entry: ManifestEntry, places: readonly string[]): Promise<string | undefined> {
  for (const place of places) if (await isRight(place, entry)) return place;
  return undefined;
}
