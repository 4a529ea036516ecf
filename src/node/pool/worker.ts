import type { MessagePort } from "node:worker_threads";
import type { ErrorParts } from "../../errors/error.ts";
import { ownError } from "../faults.ts";
import { type Job, type MadeFile, runJob } from "../write/job.ts";

/** What comes back from a thread: errors lose their kind on the way, so ours are taken apart. */
export type Outcome = { readonly made: readonly MadeFile[] } | { readonly failed: ErrorParts };

/** Does one job in a thread of its own, and tells through `port` how far it is. */
export async function work({
  job,
  port,
}: {
  readonly job: Job;
  readonly port: MessagePort;
}): Promise<Outcome> {
  try {
    return { made: await runJob(job, (done) => port.postMessage(done)) };
  } catch (error) {
    const own = ownError(error);
    if (!own) throw error;
    const { code, where, what, fix } = own;
    return { failed: { code, where, what, fix } };
  } finally {
    port.close();
  }
}
