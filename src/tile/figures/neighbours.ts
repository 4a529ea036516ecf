import type { Motif } from "../../motif/motif.ts";
import type { Nearest } from "./clearance.ts";
import type { Scene } from "./scene.ts";

/** See {@link neighboursOf}. */
export interface Neighbours {
  readonly alike: number;
  readonly expected: number;
}

/**
 * Share of motifs whose nearest neighbour (of the other motifs, by distance of outlines) is of their own kind, and the share to
 * be expected if kinds were dealt out by chance over the same places: Σ n_k (n_k - 1) / (n (n - 1)), n_k of kind k
 * (random labelling; Dixon 1994 on nearest-neighbour tables, from memory). Both 0 to 1. Fewer than expected is good: kinds
 * are well mixed. Variants of one motif are one kind.
 */
export function neighboursOf({ placements, motifs }: Scene, nearest: readonly Nearest[]): Neighbours {
  const kinds = kindsOf(motifs);
  const counts = new Map<number, number>();
  for (const { motif } of placements) counts.set(kinds[motif]!, (counts.get(kinds[motif]!) ?? 0) + 1);
  const n = placements.length;
  if (n < 2) return { alike: 0, expected: 0 };
  let alike = 0;
  nearest.forEach(({ other }, i) => {
    if (other >= 0 && kinds[placements[other]!.motif] === kinds[placements[i]!.motif]) alike++;
  });
  let pairs = 0;
  for (const count of counts.values()) pairs += count * (count - 1);
  return { alike: alike / n, expected: pairs / (n * (n - 1)) };
}

/** The kind of each motif: variants, which are drawn one after the other and numbered from 1, are of one kind. */
export function kindsOf(motifs: readonly Motif[]): number[] {
  const kinds: number[] = [];
  motifs.forEach(({ name }, i) => {
    const [, stem, number] = /^(.*)-(\d+)$/.exec(name) ?? [];
    const before = motifs[i - 1]?.name;
    const goes = number !== undefined && Number(number) > 1 && before === `${stem}-${Number(number) - 1}`;
    kinds.push(goes ? kinds[i - 1]! : i);
  });
  return kinds;
}
