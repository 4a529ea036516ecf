import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import type { Direction } from "./options.ts";

/** The turns that a direction allows, with their cosines and sines. */
export interface Turns {
  readonly turn: Float64Array;
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  /** Whether any turn is allowed, to within half a degree: motifs may then be turned while they are pushed. */
  readonly free: boolean;
}

/** "Any way up" in steps of half a degree: finer than the eye tells, and short numbers in a file. */
const counts = { "one-way": 1, "two-way": 2, "four-way": 4, tossed: 720 } as const;

/** See {@link Turns}. */
export function turnsFor(direction: Direction): Turns {
  const count = typeof direction === "string" ? counts[direction] : direction.length;
  const turn = Float64Array.from({ length: count }, (_, k) =>
    typeof direction === "string" ? k / count : direction[k]!,
  );
  return { turn, cos: turn.map(cosTurns), sin: turn.map(sinTurns), free: direction === "tossed" };
}

/** Index of the allowed turn nearest to one; where turns are not free it has to be one of them. */
export function turnIndex({ turn, free }: Turns, at: number): number {
  return free ? Math.round((at - Math.floor(at)) * turn.length) % turn.length : turn.indexOf(at);
}
