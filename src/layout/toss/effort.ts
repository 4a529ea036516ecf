import type { Freeing } from "./settle.ts";

/** How hard motifs are pressed in where no place is free. */
export interface Pressing {
  /** How one batch is pushed free. */
  readonly freeing: Freeing;
  /** Rounds of pushing for one batch. */
  readonly sweeps: number;
  /** Fruitless batches of one before it is given up. */
  readonly patience: number;
  /** First batch, as a share of all that are wanted. */
  readonly batch: number;
  /** How many more are wanted in a class than found a free place, as a share of those; `rest` in the last class. */
  readonly more: number;
  readonly rest: number;
}

/** How hard a stage is filled. */
export interface Effort {
  /** Poses tried at a cell before it is given up. */
  readonly tries: number;
  /** See {@link Seeker.rounds}. */
  readonly rounds: readonly number[];
  readonly pressing: Pressing | undefined;
}

/** Fills what is free. */
export const LIGHTLY: Effort = { tries: 48, rounds: [1, 0.7, 0.4], pressing: undefined };

/** Fills, and presses a few more in where the ground is wide. */
export const EVENLY: Effort = {
  tries: 32,
  rounds: [1, 0.7],
  pressing: { freeing: { kept: true }, sweeps: 50, patience: 3, batch: 1, more: 0.06, rest: 0.5 },
};

/** Fills, and presses in what will go: not too many large ones, or there is nothing left that small ones could fill. */
export const TIGHTLY: Effort = {
  tries: 96,
  rounds: [1, 0.7, 0.4],
  pressing: { freeing: {}, sweeps: 250, patience: 20, batch: 0.2, more: 0.08, rest: 2 },
};
