import { join } from "node:path";
import type { Pattern } from "../../pattern/pattern.ts";
import { openWorkshop, type Workshop } from "../pool/workshop.ts";
import { readManifest } from "./manifest.ts";
import { readWriteOptions, type WriteOptions } from "./options.ts";
import { type Production, produce } from "./produce.ts";
import { openStaging } from "./staging.ts";
import type { WrittenFile } from "./written.ts";

/** What was written, and the facts that a summary needs. */
export interface WrittenPattern extends Production {
  readonly folder: string;
}

/**
 * Builds a pattern once and writes its files into `<out>/<name>/`, named `<name>-<colorway>` and what tells kinds apart,
 * with `recipe.json` and `manifest.json` (sizes, SHA-256 digests, version). Threads make kinds side by side.
 *
 * The same pattern gives the same bytes, and a file that is there with the right bytes is left alone. Files of the same
 * names are replaced, others are left alone. They are written out of sight and moved to their places at the end, each
 * in one step: no file is ever half written, and after an error before that, or when called off, the folder is as it was.
 *
 * @throws SprigwrightError `unwritable-folder` before any work, `write-failed`, `unknown-colorway`,
 * `not-whole-pixels` when a PNG is asked for at a dpi that the block does not fit; and what `buildTile` throws
 */
export async function writePattern<R extends string, C extends string>(
  pattern: Pattern<R, C>,
  options: WriteOptions<C>,
): Promise<readonly WrittenFile[]> {
  const { workers } = readWriteOptions(pattern as unknown as Pattern, options);
  const workshop = await openWorkshop(workers);
  try {
    return (await writeAll(pattern as unknown as Pattern, options, workshop)).files;
  } finally {
    await workshop.close();
  }
}

/**
 * `writePattern`, with what the command wants to say about it.
 * @param resumable asked when the work fails: whether files that are ready stay out of sight, for the next run
 */
export async function writeAll(
  pattern: Pattern,
  options: WriteOptions,
  workshop: Workshop,
  resumable: () => boolean = () => false,
): Promise<WrittenPattern> {
  const plan = readWriteOptions(pattern, options);
  plan.signal?.throwIfAborted();
  const folder = join(plan.out, pattern.name);
  const staging = await openStaging(folder);
  try {
    const production = await produce(pattern, plan, folder, staging, workshop);
    await staging.discard();
    return { ...production, folder };
  } catch (error) {
    if (!(resumable() && (await readManifest(staging.hidden)))) await staging.discard();
    throw error;
  }
}
