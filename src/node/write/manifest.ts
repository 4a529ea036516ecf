import { readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { isRecord } from "../../params/compound.ts";
import type { Tile } from "../../tile/tile.ts";
import { VERSION } from "../../tile/version.ts";
import { sha256 } from "./job.ts";

/** One file of a manifest. */
export interface ManifestEntry {
  readonly file: string;
  readonly kind: string;
  readonly colorway?: string;
  readonly bytes: number;
  readonly sha256: string;
  /** Digest of all that the file was made from: version, recipe, tile, colorways, settings. */
  readonly from: string;
}

/** What lies in a pattern's folder. */
export interface Manifest {
  /** The version that wrote it. */
  readonly sprigwright: string;
  readonly pattern: string;
  /** The tile's digest. */
  readonly digest: string;
  readonly files: readonly ManifestEntry[];
}

export const MANIFEST = "manifest.json";

/** Longest manifest read (bytes): thousands of files. */
const LONGEST = 5_000_000;

export function manifestText(tile: Pick<Tile, "name" | "digest">, files: readonly ManifestEntry[]): string {
  const sorted = [...files].sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0));
  const manifest: Manifest = { sprigwright: VERSION, pattern: tile.name, digest: tile.digest, files: sorted };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}

/** The manifest in a folder; undefined where there is none, or something else. */
export async function readManifest(folder: string): Promise<Manifest | undefined> {
  try {
    const path = join(folder, MANIFEST);
    if ((await stat(path)).size > LONGEST) return undefined;
    const found: unknown = JSON.parse(await readFile(path, "utf8"));
    if (!isRecord(found) || !Array.isArray(found["files"])) return undefined;
    const files = (found["files"] as unknown[]).filter(isEntry);
    const { sprigwright, pattern, digest } = found;
    return { sprigwright: String(sprigwright), pattern: String(pattern), digest: String(digest), files };
  } catch {
    return undefined;
  }
}

/** A file of a folder itself: a name that leads elsewhere is none. */
const isEntry = (value: unknown): value is ManifestEntry =>
  isRecord(value) &&
  ["file", "kind", "sha256", "from"].every((key) => typeof value[key] === "string") &&
  typeof value["bytes"] === "number" &&
  /^[\w][\w.-]*$/.test(value["file"] as string);

/** Whether a file is there with the bytes that its entry says. */
export async function isRight(folder: string, entry: ManifestEntry): Promise<boolean> {
  try {
    const path = join(folder, entry.file);
    const found = await stat(path);
    return found.isFile() && found.size === entry.bytes && sha256(await readFile(path)) === entry.sha256;
  } catch {
    return false;
  }
}
