import { type Distance, farthestFirst, leastDistance } from "./apart.ts";

/** Entries from which a choice is begun. */
const STARTS = 32;

/** What of the distance reached is kept when better entries take the place of lesser ones. */
const KEPT = 0.99;

/** Of the choices begun, how many are widened. */
const WIDENED = 4;

/** Most entries that are exchanged to widen a choice. */
const EXCHANGES = 60;

/**
 * Chooses `count` of a list that is sorted by worth, best first: the first, and others far apart, then as good as that allows.
 *
 * Farthest-first choices are begun from the first entry and a second all over the list, the best of them widened, and the one
 * whose nearest two are farthest apart is taken. Then every chosen entry but the first makes way for the best one that keeps
 * (nearly) that distance from all others.
 */
export function choose(total: number, count: number, distance: Distance): number[] {
  if (count >= total) return Array.from({ length: total }, (_, i) => i);
  if (count === 1) return [0];
  const starts = Math.min(STARTS, total - 1);
  const begun = Array.from({ length: starts }, (_, k) => {
    const second = k === 0 ? [] : [1 + Math.floor((k * (total - 1)) / starts)];
    const chosen = farthestFirst(total, count, [0, ...second], distance);
    return { chosen, least: leastDistance(chosen, distance) };
  });
  begun.sort((a, b) => b.least - a.least);
  let best = begun[0]!;
  for (const { chosen } of begun.slice(0, WIDENED)) {
    const wide = wider(chosen, total, distance);
    const least = leastDistance(wide, distance);
    if (least > best.least) best = { chosen: wide, least };
  }
  return better(best.chosen, total, best.least * KEPT, distance).sort((a, b) => a - b);
}

/** Exchanges one of the two nearest for an entry that is farther from all others, as long as there is one. */
function wider(chosen: readonly number[], total: number, distance: Distance): number[] {
  let taken = [...chosen];
  for (let k = 0; k < EXCHANGES; k++) {
    const [one, other, least] = nearest(taken, distance);
    let [best, away] = [taken, least];
    for (const place of [one, other]) {
      if (taken[place] === 0) continue;
      const others = taken.filter((_, i) => i !== place);
      for (let i = 0; i < total; i++) {
        let near = Number.POSITIVE_INFINITY;
        for (let j = 0; j < others.length && near > away; j++) near = Math.min(near, distance(i, others[j]!));
        if (near > away) [best, away] = [[...others, i], near];
      }
    }
    if (best === taken) break;
    taken = best;
  }
  return taken;
}

/** The places of the two that are nearest, and their distance. */
function nearest(chosen: readonly number[], distance: Distance): [one: number, other: number, least: number] {
  let found: [number, number, number] = [0, 0, Number.POSITIVE_INFINITY];
  for (let i = 1; i < chosen.length; i++)
    for (let j = 0; j < i; j++) {
      const d = distance(chosen[i]!, chosen[j]!);
      if (d < found[2]) found = [i, j, d];
    }
  return found;
}

/** Puts the best entry there is in each place, from the least good on, as long as all stay `apart`. */
function better(chosen: readonly number[], total: number, apart: number, distance: Distance): number[] {
  const taken = [...chosen];
  for (let changed = true; changed; ) {
    changed = false;
    taken.sort((a, b) => b - a);
    for (let place = 0; place < taken.length; place++) {
      const others = taken.filter((_, i) => i !== place);
      for (let i = 0; i < Math.min(total, taken[place]!); i++)
        if (others.every((other) => other !== i && distance(other, i) >= apart)) {
          taken[place] = i;
          changed = true;
          break;
        }
    }
  }
  return taken;
}
