import { createHash } from "node:crypto";
import { rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Colorway } from "../../colorway/colorway.ts";
import type { Tile } from "../../tile/tile.ts";
import { writeFailed } from "../faults.ts";
import { type FileKind, formatOf } from "./formats/all.ts";
import type { OtherFile, Settings } from "./formats/format.ts";

/** Files to be made, as plain data that can be handed to another thread. */
export interface Job {
  readonly tile: Tile;
  readonly kind: FileKind;
  readonly colorways: readonly Colorway[];
  readonly settings: Settings;
  /** See `Order`. */
  readonly others: readonly OtherFile[];
  /** Where the files are written, out of sight. */
  readonly hidden: string;
  /** Where they will lie, for messages. */
  readonly folder: string;
}

/** A file that was made. */
export interface MadeFile {
  readonly file: string;
  readonly bytes: number;
  readonly sha256: string;
  readonly colorway?: string;
}

/**
 * Makes a job's files, and tells the share that is done. Each is written under another name and then renamed, so that what has its name is whole.
 * @throws SprigwrightError `write-failed`, and what the format throws
 */
export async function runJob(job: Job, tell: (done: number) => void): Promise<readonly MadeFile[]> {
  const { tile, kind, colorways, settings, others, hidden, folder } = job;
  const made: MadeFile[] = [];
  const put = async (file: string, content: Uint8Array | string, colorway?: string): Promise<void> => {
    const bytes = typeof content === "string" ? Buffer.from(content) : content;
    await putFile(hidden, file, bytes, folder);
    made.push({
      file,
      bytes: bytes.length,
      sha256: sha256(bytes),
      ...(colorway === undefined ? {} : { colorway }),
    });
  };
  await formatOf(kind).make({ tile, colorways, settings, others, put, onProgress: tell });
  return made;
}

/** Writes a file beside its place, then moves it there in one step. */
export async function putFile(
  hidden: string,
  file: string,
  bytes: Uint8Array | string,
  folder: string,
): Promise<void> {
  const part = join(hidden, `${file}.part`);
  try {
    await writeFile(part, bytes, { flush: true });
    await rename(part, join(hidden, file));
  } catch (cause) {
    throw writeFailed(join(folder, file), cause);
  }
}

export const sha256 = (bytes: Uint8Array | string): string =>
  createHash("sha256").update(bytes).digest("hex");
