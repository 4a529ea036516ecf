import { setMaxListeners } from "node:events";
import { join } from "node:path";
import type { Tile } from "../../tile/tile.ts";
import type { Workshop } from "../pool/workshop.ts";
import { type Earlier, entriesOf, type Task } from "./jobs.ts";
import { MANIFEST, type ManifestEntry, manifestText } from "./manifest.ts";
import type { WritePlan } from "./options.ts";
import type { Result } from "./own-files.ts";
import type { Staging } from "./staging.ts";

/** Share of the whole that laying out takes. */
export const LAID_OUT = 0.55;

/** Share at which all files are made, and only moving is left. */
const MADE = 0.99;

/** Makes the files of tasks. */
export interface Workbench {
  /** Makes or finds the files of all tasks, which are the part of the work between two shares. */
  makeAll(tasks: readonly Task[], from: number, to: number): Promise<Result[]>;
}

/** Makes tasks, or finds them made, and keeps a manifest of what is ready, for a run that comes after a stopped one. */
export function workbench(
  tile: Tile,
  { settings, signal: given, onProgress }: WritePlan,
  folder: string,
  { hidden, put }: Staging,
  workshop: Workshop,
  earlier: Earlier,
): Workbench {
  const ready: ManifestEntry[] = [];
  const signal = given && AbortSignal.any([given]);
  // Every task that waits listens; Node would take more than ten for a leak.
  if (signal) setMaxListeners(0, signal);
  let writing: Promise<void> = Promise.resolve();
  const make = async (task: Task, tell: (done: number, file?: string) => void): Promise<Result[]> => {
    signal?.throwIfAborted();
    const found = await earlier.find(task, hidden);
    const { kind, colorways, others } = task;
    const job = { tile, kind, colorways, settings, others, hidden, folder };
    const entries = found?.entries ?? entriesOf(task, await workshop.run(job, tell, signal));
    ready.push(...entries);
    writing = writing.then(() => put(MANIFEST, manifestText(tile, ready)));
    await writing;
    for (const { file } of entries) tell(1, join(folder, file));
    return entries.map((entry) => ({ entry, unchanged: found?.inPlace.has(entry.file) ?? false }));
  };
  return {
    async makeAll(tasks, from, to) {
      const shares = new Float64Array(tasks.length);
      const work = tasks.map((task, i) =>
        make(task, (done, file) => {
          shares[i] = Math.max(shares[i]!, done);
          const share = from + ((to - from) * shares.reduce((a, b) => a + b, 0)) / tasks.length;
          onProgress({
            stage: "files",
            done: LAID_OUT + (MADE - LAID_OUT) * share,
            ...(file ? { file } : {}),
          });
        }),
      );
      // Not before every one has ended, so that nothing writes any more when the first failure is told.
      const ended = await Promise.allSettled(work);
      for (const one of ended) if (one.status === "rejected") throw one.reason;
      signal?.throwIfAborted();
      return (await Promise.all(work)).flat();
    },
  };
}
