import { mkdtemp, rename, rm, rmdir, stat, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { unwritableFolder, writeFailed } from "../faults.ts";
import { makeFolders, removeEmpty } from "./folders.ts";

/** A hidden folder beside the files to come, in which they are written before they take their places. */
export interface Staging {
  /** Writes one file out of sight. */
  put(name: string, bytes: Uint8Array | string): Promise<void>;
  /** Moves every file to its place: each move is one step of the file system, so no file is ever half there. */
  publish(): Promise<void>;
  /** Takes away all that staging made and nothing else. */
  discard(): Promise<void>;
}

/**
 * Makes `folder` and a staging folder in it, which also proves that it can be written in.
 * @throws SprigwrightError `unwritable-folder`
 */
export async function openStaging(folder: string): Promise<Staging> {
  const target = resolve(folder);
  let made: readonly string[] = [];
  let hidden: string;
  try {
    made = await makeFolders(target);
    hidden = await mkdtemp(join(target, ".unfinished-"));
  } catch (cause) {
    await removeEmpty(made);
    throw unwritableFolder(folder, cause);
  }
  const names: string[] = [];
  return {
    put: async (name, bytes) => {
      await orFail(join(folder, name), () => writeFile(join(hidden, name), bytes));
      names.push(name);
    },
    publish: async () => {
      // Looked at before the first move, so that one bad place does not leave half a set.
      for (const name of names) await orFail(join(folder, name), () => refuseFolder(join(target, name)));
      for (const name of names)
        await orFail(join(folder, name), () => rename(join(hidden, name), join(target, name)));
      await rmdir(hidden).catch(() => {}); // everything is in its place: an empty folder left over is no failure
    },
    discard: async () => {
      await rm(hidden, { recursive: true, force: true });
      await removeEmpty(made);
    },
  };
}

async function orFail(file: string, work: () => Promise<unknown>): Promise<void> {
  try {
    await work();
  } catch (cause) {
    throw writeFailed(file, cause);
  }
}

async function refuseFolder(path: string): Promise<void> {
  const found = await stat(path).catch(() => undefined);
  if (found?.isDirectory()) throw Object.assign(new Error("is a folder"), { code: "EISDIR" });
}
