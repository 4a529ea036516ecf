import { EXIT } from "./host.ts";
import { run } from "./run.ts";

/** Runs the command in this process: its words, its streams, its signals. */
export async function start(): Promise<void> {
  const { stdout, stderr, env, argv } = process;
  const controller = new AbortController();
  // Once: a second Ctrl-C ends the process at once, as anywhere.
  const interrupt = (): void => controller.abort();
  const heed = (): void => void process.once("SIGINT", interrupt).once("SIGTERM", interrupt);
  // A reader that has seen enough (`| head`) is no error.
  stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(EXIT.done);
    throw error;
  });
  // Should a script wait for what never comes, Node ends on its own before the code is set below.
  let finished = false;
  process.once("exit", () => {
    if (finished) return;
    process.exitCode = EXIT.wrongUse;
    stderr.write("a script never finished: it waits for something that does not come\n");
  });
  const { signal } = controller;
  const code = await run(argv.slice(2), { out: stdout, err: stderr, env, signal, heed });
  finished = true;
  process.exitCode = code;
  process.off("SIGINT", interrupt).off("SIGTERM", interrupt);
}
