/** How hard motifs are pressed in where no place is free. */
export interface Pressing {
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
  tries: 24,
  rounds: [1, 0.7],
  pressing: { sweeps: 50, patience: 3, batch: 1, more: 0.1, rest: 0.45 },
};

/** Fills, and presses in what will go: not too many large ones, or there is nothing left that small ones could fill. */
export const TIGHTLY: Effort = {
  tries: 96,
  rounds: [1, 0.7, 0.4],
  pressing: { sweeps: 250, patience: 20, batch: 0.2, more: 0.08, rest: 2 },
};
