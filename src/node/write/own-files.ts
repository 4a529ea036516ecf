import { stat } from "node:fs/promises";
import { join, resolve } from "node:path";
import type { Tile } from "../../tile/tile.ts";
import { sha256 } from "./job.ts";
import { isRight, MANIFEST, type ManifestEntry, manifestText, readManifest } from "./manifest.ts";
import type { Staging } from "./staging.ts";

/** A file of this run. */
export interface Result {
  readonly entry: ManifestEntry;
  /** Whether it is in its place already. */
  readonly unchanged: boolean;
}

/** The recipe, and the manifest: new entries, and those of other files of the same tile that are still there. */
export async function ownFiles(
  tile: Tile,
  made: readonly Result[],
  folder: string,
  staging: Staging,
): Promise<readonly Result[]> {
  const target = resolve(folder);
  const add = async (file: string, kind: string, text: string): Promise<Result> => {
    const digest = sha256(text);
    const entry = { file, kind, bytes: Buffer.byteLength(text), sha256: digest, from: digest };
    const unchanged = await isRight(target, entry);
    if (!unchanged) await staging.put(file, text);
    return { entry, unchanged };
  };
  const recipe = await add("recipe.json", "recipe", `${JSON.stringify(tile.recipe, null, 2)}\n`);
  const fresh = [...made, recipe].map(({ entry }) => entry);
  const before = await readManifest(target);
  const kept: ManifestEntry[] = [];
  for (const entry of before?.digest === tile.digest ? before.files : []) {
    if (fresh.some(({ file }) => file === entry.file)) continue;
    const found = await stat(join(target, entry.file)).catch(() => undefined);
    if (found?.size === entry.bytes) kept.push(entry);
  }
  return [recipe, await add(MANIFEST, "manifest", manifestText(tile, [...fresh, ...kept]))];
}
