import type { ClosePair } from "./close-pairs.ts";

/** So many places where one motif is too near to others are one finding: the cause is that motif. */
const MANY = 3;

/** Pairs that are told together, the nearest first; `cause` is in all of them, if they are many. */
export interface Cause {
  readonly cause: string | undefined;
  readonly pairs: readonly ClosePair[];
}

/** Pairs of a motif that is in many, together; all others alone. In the order of the nearest pair of each. */
export function causesOf(pairs: readonly ClosePair[]): Cause[] {
  const of = new Map<string, ClosePair[]>();
  for (const pair of pairs)
    for (const id of new Set([pair.first, pair.second])) {
      const own = of.get(id);
      if (own) own.push(pair);
      else of.set(id, [pair]);
    }
  const told = new Set<ClosePair>();
  const causes: Cause[] = [];
  for (const pair of pairs) {
    if (told.has(pair)) continue;
    const { first, second } = pair;
    const cause = of.get(second)!.length > of.get(first)!.length ? second : first;
    const own = of.get(cause)!.filter((one) => !told.has(one));
    const together = own.length >= MANY ? own : [pair];
    for (const one of together) told.add(one);
    causes.push({ cause: together.length > 1 ? cause : undefined, pairs: together });
  }
  return causes;
}
