import type { Standing } from "../layout.ts";
import type { Fixed, TossEntry } from "./options.ts";
import { apportion } from "./shares.ts";

/** The entry that the id of a placement names, from 0: "2-5" is the fifth of the second. */
export function entryOfId(id: string, entries: number): number | undefined {
  const [, number] = /^([1-9]\d{0,3})-[1-9]\d{0,6}$/.exec(id) ?? [];
  return number !== undefined && Number(number) <= entries ? Number(number) - 1 : undefined;
}

/** Held motifs with their entries. Those whose ids are not of this toss stand all the same, and count for nothing. */
export const fixedOf = (
  held: readonly Standing[],
  entries: readonly TossEntry[],
): { readonly own: readonly Fixed[]; readonly others: readonly Standing[] } => {
  const own: Fixed[] = [];
  const others: Standing[] = [];
  for (const one of held) {
    const { placement, motif } = one;
    const entry = entryOfId(placement.id, entries.length);
    if (entry === undefined) others.push(one);
    else own.push({ placement, motif, entry, extra: (entries[entry]!.gap ?? 0) * 1000 });
  }
  return { own, others };
};

/** How many of each entry there are. */
export function countByEntry(fixed: readonly { readonly entry: number }[], entries: number): number[] {
  const counts = new Array<number>(entries).fill(0);
  for (const { entry } of fixed) counts[entry]!++;
  return counts;
}

/**
 * How many of each entry are still wanted for `total` in the proportion of the shares, when some stand already. An
 * entry that has more than its share keeps them, and the others share what is left.
 */
export function stillWanted(
  total: number,
  shares: readonly number[],
  already: readonly number[],
): readonly number[] {
  const open = new Set(shares.keys());
  for (;;) {
    const left = [...shares.keys()].reduce((sum, k) => (open.has(k) ? sum : sum - already[k]!), total);
    const parts =
      open.size === 0
        ? []
        : apportion(
            Math.max(0, left),
            [...open].map((k) => shares[k]!),
          );
    const wanted = [...open].map((k, i) => ({ k, more: parts[i]! - already[k]! }));
    const over = wanted.filter(({ more }) => more < 0);
    if (over.length === 0) {
      const counts = new Array<number>(shares.length).fill(0);
      for (const { k, more } of wanted) counts[k] = more;
      return counts;
    }
    for (const { k } of over) open.delete(k);
  }
}

/** How many of each entry there are to be of `total`, those that stand already counted in. */
export const countsFor = (total: number, shares: readonly number[], already: readonly number[]): number[] =>
  stillWanted(total, shares, already).map((number, entry) => number + already[entry]!);
