import { mkdir, rmdir, stat } from "node:fs/promises";
import { dirname } from "node:path";

/**
 * Makes a folder and those above it that are missing; returns the made ones, outermost first.
 * After a failure it takes away what it made.
 *
 * One by one, since Node's own recursive mkdir never ends where the system answers ENOENT below a folder that
 * exists, as Linux does in /proc.
 */
export async function makeFolders(folder: string): Promise<readonly string[]> {
  const missing: string[] = [];
  for (let at = folder; !(await exists(at)) && dirname(at) !== at; at = dirname(at)) missing.unshift(at);
  const made: string[] = [];
  try {
    for (const path of missing) if (await make(path)) made.push(path);
  } catch (error) {
    await removeEmpty(made);
    throw error;
  }
  return made;
}

/** Removes folders, innermost first, as long as they are empty. */
export async function removeEmpty(folders: readonly string[]): Promise<void> {
  for (const folder of [...folders].reverse())
    try {
      await rmdir(folder);
    } catch {
      return;
    }
}

async function exists(path: string): Promise<boolean> {
  try {
    await stat(path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return false;
    throw error;
  }
}

/** Whether it was made here; another process may have been quicker. */
async function make(path: string): Promise<boolean> {
  try {
    await mkdir(path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
    const found = await stat(path).catch(() => undefined);
    if (found?.isDirectory()) return false;
    throw error;
  }
}
