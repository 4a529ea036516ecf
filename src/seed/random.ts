import alea from "seedrandom/lib/alea.js";

/**
 * A stream of chance. The same seed gives the same numbers in every JavaScript engine
 * (the Alea generator of `seedrandom`: additions and multiplications only).
 */
export interface Random {
  /** The next number, at least 0 and below 1, with 53 random bits. */
  next(): number;
  /** A number at least `low` and below `high`. */
  between(low: number, high: number): number;
  /** A whole number from 0 to `count - 1`. */
  below(count: number): number;
  /** One entry of a list that is not empty. */
  pick<T>(list: readonly T[]): T;
  /** A stream of its own for `name`: drawing from it never moves this one. */
  fork(name: string): Random;
}

/** A stream for a seed. Equal seeds give equal streams. */
export function createRandom(seed: string): Random {
  const stream = alea(seed);
  const random: Random = {
    next: () => stream.double(),
    between: (low, high) => low + (high - low) * stream.double(),
    below: (count) => Math.floor(stream.double() * count),
    pick: (list) => list[random.below(list.length)]!,
    fork: (name) => createRandom(`${seed}/${name.length}:${name}`),
  };
  return random;
}
