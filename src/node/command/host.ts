/** Somewhere to write text: a terminal, a pipe, a file, or a test's list. */
export interface Sink {
  write(text: string): unknown;
  readonly isTTY?: boolean | undefined;
  readonly columns?: number | undefined;
}

/** What the command gets from whoever runs it. */
export interface Host {
  /** Results go here. */
  readonly out: Sink;
  /** Progress and errors go here. */
  readonly err: Sink;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Calls the work off, once `heed` was called. */
  readonly signal: AbortSignal;
  /**
   * From here on there is something to leave tidy: an interruption aborts `signal`. Before, it ends the process at once, as
   * it does when a script is busy with work of its own and hears nothing.
   */
  readonly heed: () => void;
}

/** What the command's end means to the shell. */
export const EXIT = { done: 0, faults: 1, wrongUse: 2, notWritten: 3, interrupted: 130 } as const;
