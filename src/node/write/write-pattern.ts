import { join } from "node:path";
import type { Pattern } from "../../pattern/pattern.ts";
import { readWriteOptions, type WriteOptions } from "./options.ts";
import { type Production, produce } from "./produce.ts";
import { openStaging } from "./staging.ts";
import type { WrittenFile } from "./written.ts";

/** What was written, and the facts that a summary needs. */
export interface WrittenPattern extends Production {
  readonly folder: string;
}

/**
 * Builds a pattern once and writes its files into `<out>/<name>/`:
 * `<name>-<colorway>.svg`, `<name>-<colorway>-<dpi>dpi.png`, `<name>-<colorway>-field.png` and `recipe.json`.
 *
 * The same pattern gives the same bytes. Files of the same names are replaced, others are left alone. They are
 * written out of sight and moved to their places at the end, each in one step: no file is ever half written, and after
 * an error before that, or when called off, the folder is as it was.
 *
 * @throws SprigwrightError `unwritable-folder` before any work, `write-failed`, `unknown-colorway`,
 * `not-whole-pixels` when a PNG is asked for at a dpi that the block does not fit; and what `buildTile` throws
 */
export async function writePattern<R extends string, C extends string>(
  pattern: Pattern<R, C>,
  options: WriteOptions<C>,
): Promise<readonly WrittenFile[]> {
  return (await writeAll(pattern as unknown as Pattern, options)).files;
}

/** `writePattern`, with what the command wants to say about it. */
export async function writeAll(pattern: Pattern, options: WriteOptions): Promise<WrittenPattern> {
  const plan = readWriteOptions(pattern, options);
  plan.signal?.throwIfAborted();
  const folder = join(plan.out, pattern.name);
  const staging = await openStaging(folder);
  try {
    const production = await produce(pattern, plan, folder, staging.put);
    await staging.publish();
    return { ...production, folder };
  } catch (error) {
    await staging.discard();
    throw error;
  }
}
