import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import type { Direction } from "./options.ts";

/** The turns that a direction allows, with their cosines and sines. */
export interface Turns {
  readonly turn: Float64Array;
  readonly cos: Float64Array;
  readonly sin: Float64Array;
}

/** "Any way up" in steps of half a degree: finer than the eye tells, and short numbers in a file. */
const counts: Readonly<Record<Direction, number>> = {
  "one-way": 1,
  "two-way": 2,
  "four-way": 4,
  tossed: 720,
};

/** See {@link Turns}. */
export function turnsFor(direction: Direction): Turns {
  const turn = Float64Array.from({ length: counts[direction] }, (_, k) => k / counts[direction]);
  return { turn, cos: turn.map(cosTurns), sin: turn.map(sinTurns) };
}
