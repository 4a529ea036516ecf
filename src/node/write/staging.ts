import { mkdtemp, readdir, rename, rm, stat } from "node:fs/promises";
import { join, resolve } from "node:path";
import { unwritableFolder, writeFailed } from "../faults.ts";
import { makeFolders, removeEmpty } from "./folders.ts";
import { putFile } from "./job.ts";

/** A hidden folder beside the files to come, in which they are written before they take their places. */
export interface Staging {
  /** Where files are written out of sight. */
  readonly hidden: string;
  /** Hidden folders of runs that were stopped before they could move their files. */
  readonly leftovers: readonly string[];
  /** Writes one file out of sight. */
  put(name: string, bytes: Uint8Array | string): Promise<void>;
  /** Moves files that were written out of sight to their places: each in one step, so that none is ever half there. */
  publish(names: readonly string[]): Promise<void>;
  /** Takes away all that staging made, and what stopped runs left. */
  discard(): Promise<void>;
}

/** Folders of this library's begin so; the process that made each comes next. */
const HIDDEN = ".unfinished-";

/**
 * Makes `folder` and a staging folder in it, which also proves that it can be written in.
 * @throws SprigwrightError `unwritable-folder`
 */
export async function openStaging(folder: string): Promise<Staging> {
  const target = resolve(folder);
  let made: readonly string[] = [];
  let hidden: string;
  let leftovers: readonly string[];
  try {
    made = await makeFolders(target);
    leftovers = await abandonedIn(target);
    hidden = await mkdtemp(join(target, `${HIDDEN}${process.pid}-`));
  } catch (cause) {
    await removeEmpty(made);
    throw unwritableFolder(folder, cause);
  }
  return {
    hidden,
    leftovers,
    put: (name, bytes) => putFile(hidden, name, bytes, folder),
    publish: async (names) => {
      // Looked at before the first move, so that one bad place does not leave half a set.
      for (const name of names) await orFail(join(folder, name), () => refuseFolder(join(target, name)));
      for (const name of names)
        await orFail(join(folder, name), () => rename(join(hidden, name), join(target, name)));
    },
    discard: async () => {
      for (const path of [hidden, ...leftovers])
        await rm(path, { recursive: true, force: true }).catch(() => {});
      await removeEmpty(made);
    },
  };
}

/** Staging folders whose process is no more. */
async function abandonedIn(target: string): Promise<readonly string[]> {
  const names = (await readdir(target)).filter((name) => name.startsWith(HIDDEN)).sort();
  return names
    .filter((name) => !isAlive(Number(/^\d+/.exec(name.slice(HIDDEN.length))?.[0])))
    .map((name) => join(target, name));
}

function isAlive(pid: number): boolean {
  if (!Number.isInteger(pid)) return false;
  try {
    process.kill(pid, 0); // sends nothing
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM"; // alive, and somebody else's
  }
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
