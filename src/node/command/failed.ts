import { ownError } from "../faults.ts";
import { EXIT, type Host } from "./host.ts";
import { styleFor } from "./style.ts";

/** Codes of errors that a printer would have, not the script: they end like faults that `inspect` finds. */
const PRINT_PROBLEMS = ["not-whole-pixels", "raster-size"];
const DISK_PROBLEMS = ["unwritable-folder", "write-failed"];

/** Prints an error for a person and returns the exit code it calls for. */
export function failed(error: unknown, { err, env, signal }: Host, stack: boolean): number {
  const style = styleFor(err, env);
  if (signal.aborted) {
    err.write(`${style.warning("interrupted")}; nothing was left half-written; run it again to go on\n`);
    return EXIT.interrupted;
  }
  const own = ownError(error);
  if (!own) {
    // Not a mistake of the user's: all that is known helps whoever mends it.
    const told = error instanceof Error ? (error.stack ?? error.message) : String(error);
    err.write(`${style.fault("unexpected")}: ${told}\n`);
    return EXIT.wrongUse;
  }
  err.write(`${style.fault(own.where)}: ${own.what}\n  fix: ${own.fix} ${style.quiet(`[${own.code}]`)}\n`);
  if (stack) err.write(`${style.quiet(stacks(own))}\n`);
  if (DISK_PROBLEMS.includes(own.code)) return EXIT.notWritten;
  return PRINT_PROBLEMS.includes(own.code) ? EXIT.faults : EXIT.wrongUse;
}

/** Where an error and its causes arose, outermost first. */
function stacks(error: Error): string {
  const parts: string[] = [];
  let at: unknown = error;
  while (at instanceof Error && parts.length < 8) {
    parts.push(`${parts.length > 0 ? "because of " : ""}${at.stack ?? at.message}`);
    at = at.cause;
  }
  return parts.join("\n");
}
