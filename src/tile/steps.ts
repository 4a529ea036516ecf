import { badInput } from "../errors/catalogue.ts";

/** How a long piece of work is watched and called off. */
export interface Watch {
  /** Calls the work off; its reason is thrown. */
  readonly signal?: AbortSignal | undefined;
  /** Told how far the work is, from 0 to 1, never backwards. */
  readonly onProgress?: ((done: number) => void) | undefined;
}

/** Most times a piece may report before it counts as running away. */
const STEP_BUDGET = 1_000_000;

/** Reports between two breathers, in which timers, input and the abort signal get their turn. */
const STEPS_PER_BREATH = 8;

/** What a piece awaits: reports progress between `from` and `to`, gives way, and stops when called off. */
export function stepper(watch: Watch, from: number, to: number): (done: number) => Promise<void> {
  let steps = 0;
  let furthest = 0;
  return async (done) => {
    watch.signal?.throwIfAborted();
    if (++steps > STEP_BUDGET)
      throw badInput(
        "step-budget",
        "layout",
        `it went past ${STEP_BUDGET} steps without an end`,
        "mend the piece, or ask it for less",
      );
    if (done > furthest) furthest = Math.min(1, done);
    watch.onProgress?.(from + (to - from) * furthest);
    if (steps % STEPS_PER_BREATH === 0) await breathe();
    watch.signal?.throwIfAborted();
  };
}

/** Lets the host take a turn; an engine without timers just goes on. */
function breathe(): Promise<void> {
  return typeof setTimeout === "function"
    ? new Promise((resolve) => setTimeout(resolve, 0))
    : Promise.resolve();
}
