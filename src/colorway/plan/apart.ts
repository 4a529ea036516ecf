import type { Candidate } from "./assign.ts";
import type { InkTable } from "./ink-table.ts";
import type { Sight } from "./sight.ts";

/** Distance of two entries of a list, by their numbers. */
export type Distance = (a: number, b: number) => number;

/** How different two colorways look: the mean ΔE00 of their inks, role by role, large roles weighing more. */
export function colorwayDistance(
  { weights }: Sight,
  { difference, inks: { length: count } }: InkTable,
  candidates: readonly Candidate[],
): Distance {
  const roles = weights.length;
  const given = Int32Array.from(candidates.flatMap(({ inks }) => inks));
  const heavy = Float64Array.from(weights);
  return (a, b) => {
    let sum = 0;
    for (let role = 0; role < roles; role++)
      sum += heavy[role]! * difference[given[a * roles + role]! * count + given[b * roles + role]!]!;
    return sum;
  };
}

/**
 * Numbers of `count` entries out of `total` that lie far apart: beginning with `start`, each time the one that is farthest
 * from all that were chosen (Gonzalez, 1985: from one entry, at least half as far apart as any choice can be); of equals the first.
 */
export function farthestFirst(
  total: number,
  count: number,
  start: readonly number[],
  distance: Distance,
): number[] {
  const chosen = [...start];
  const away = new Float64Array(total).fill(Number.POSITIVE_INFINITY);
  for (let k = 0; k < Math.min(count, total) - 1; k++) {
    const last = chosen[k]!;
    away[last] = -1;
    let best = -1;
    for (let i = 0; i < total; i++) {
      if (away[i]! < 0) continue;
      const d = distance(last, i);
      if (d < away[i]!) away[i] = d;
      if (best < 0 || away[i]! > away[best]!) best = i;
    }
    if (k === chosen.length - 1) chosen.push(best);
  }
  return chosen;
}

/** The smallest distance of any two of the chosen. */
export function leastDistance(chosen: readonly number[], distance: Distance): number {
  let least = Number.POSITIVE_INFINITY;
  chosen.forEach((a, i) => {
    for (let j = 0; j < i; j++) least = Math.min(least, distance(a, chosen[j]!));
  });
  return least;
}
