import { availableParallelism } from "node:os";
import { MessageChannel } from "node:worker_threads";
import { SprigwrightError } from "../../errors/error.ts";
import { type Job, type MadeFile, runJob } from "../write/job.ts";
import type { Outcome } from "./worker.ts";

/** Where jobs are done. */
export interface Workshop {
  /** Does a job as soon as there is room; `tell` hears the share that is done. */
  run(job: Job, tell: (done: number) => void, signal: AbortSignal | undefined): Promise<readonly MadeFile[]>;
  /** Ends the threads. */
  close(): Promise<void>;
}

/** As many threads as there are cores. */
export const allCores = (): number => availableParallelism();

/**
 * A workshop of `workers` threads; of one, jobs are done one after the other in this thread. So they are, too, where the
 * library runs from its sources, which threads cannot load.
 */
export async function openWorkshop(workers: number): Promise<Workshop> {
  return workers <= 1 || import.meta.url.endsWith(".ts") ? here() : inThreads(workers);
}

function here(): Workshop {
  let before: Promise<unknown> = Promise.resolve();
  return {
    run(job, tell, signal) {
      const mine = before.then(() => {
        signal?.throwIfAborted();
        return runJob(job, (done) => {
          signal?.throwIfAborted();
          tell(done);
        });
      });
      before = mine.catch(() => {});
      return mine;
    },
    close: async () => {},
  };
}

async function inThreads(workers: number): Promise<Workshop> {
  const { Tinypool } = await import("tinypool");
  const pool = new Tinypool({
    filename: new URL("./worker.js", import.meta.url).href,
    minThreads: workers,
    maxThreads: workers,
    // A tile can be large: a thread that waits holds none.
    concurrentTasksPerWorker: 1,
  });
  return {
    async run(job, tell, signal) {
      const { port1, port2 } = new MessageChannel();
      port1.on("message", tell);
      try {
        const outcome = (await pool.run(
          { job, port: port2 },
          { name: "work", transferList: [port2], signal: signal ?? null },
        )) as Outcome;
        if ("failed" in outcome) throw new SprigwrightError(outcome.failed);
        return outcome.made;
      } catch (error) {
        signal?.throwIfAborted();
        throw error;
      } finally {
        port1.close();
      }
    },
    close: () => pool.destroy(),
  };
}
