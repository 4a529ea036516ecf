import type { InkTable } from "./ink-table.ts";
import { drag } from "./reading.ts";
import type { Sight } from "./sight.ts";

/** What a colorway is judged by, each from 0 (bad) to 1 (as good as can be). */
export interface Terms {
  /** How well roles that meet are told apart, by ΔE00 and lightness; long edges count more. */
  readonly edges: number;
  /** How far motifs stand off the ground they lie on, in lightness: half the mean by area, half the worst of the large. */
  readonly ground: number;
  /** How quiet large areas are: chroma by area. */
  readonly quiet: number;
  /** Whether some smaller role is strong: its chroma. */
  readonly accent: number;
}

/** A judgement before it is put in words. */
export interface Judged {
  readonly terms: Terms;
  /** Number of the edge that does most harm, by how badly it reads and how long it is; -1 when no roles meet. */
  readonly weakest: number;
  /** 0..1. */
  readonly worth: number;
}

/** What judging rests on besides: common practice and our own eye, no standard. */
const LIMITS = {
  /** Difference in L* at which a motif stands off its ground as well as can be. */
  standing: 38,
  /** Part of all that lies on the ground from which a role may not sink into it unnoticed. */
  large: 0.15,
  /** Mean chroma (OKLCH) over the cloth up to which it is quiet, and from which it is loud. */
  calm: 0.045,
  loud: 0.16,
  /** Chroma of an accent, and the largest share of the cloth that still counts as one. */
  accent: 0.13,
  small: 0.4,
} as const;

/** What each term counts for. */
const SHARE = { edges: 0.4, ground: 0.25, quiet: 0.2, accent: 0.15 } as const;

/**
 * Judges an assignment of inks (numbers in the table) to roles. A role that has none yet (-1) counts as if it got the
 * best ink there is, so that what is half assigned is never judged worse than what can become of it.
 */
export function judge(sight: Sight, table: InkTable, inks: ArrayLike<number>): Judged {
  // Called thousands of times before the engine has warmed up: one plain statement for each value.
  let edges = 0;
  let worst = 0;
  let most = -1;
  let weakest = -1;
  let standing = 0;
  let sunk = 1;
  for (let e = 0; e < sight.edges.length; e++) {
    const { below, above, weight, lying } = sight.edges[e]!;
    const a = inks[below]!;
    const b = inks[above]!;
    const known = a >= 0 && b >= 0;
    const read = known ? table.reads[a * table.inks.length + b]! : 1;
    edges += weight * read;
    const pull = drag(read, weight);
    worst = Math.max(worst, pull);
    // What drags comes first; where nothing does, what costs the score most.
    const loss = pull > 0 ? 1 + pull : weight * (1 - read);
    if (loss > most) [most, weakest] = [loss, e];
    if (below !== 0) continue;
    const gap = known ? Math.abs(table.lightness[a]! - table.lightness[b]!) : LIMITS.standing;
    const off = Math.min(1, gap / LIMITS.standing);
    standing += lying * off;
    if (lying >= LIMITS.large) sunk = Math.min(sunk, off);
  }
  let mean = 0;
  let strongest = 0;
  for (let role = 0; role < sight.roles.length; role++) {
    const ink = inks[role]!;
    const share = sight.shares[role]!;
    const chroma = ink >= 0 ? table.chroma[ink]! : 0;
    mean += share * chroma;
    if (share > 0 && share <= LIMITS.small)
      strongest = Math.max(strongest, ink >= 0 ? chroma : LIMITS.accent);
  }
  const terms = {
    edges: sight.edges.length > 0 ? edges : 1,
    ground: sight.lies ? (standing + sunk) / 2 : 1,
    quiet: 1 - Math.min(1, Math.max(0, mean - LIMITS.calm) / (LIMITS.loud - LIMITS.calm)),
    accent: Math.min(1, strongest / LIMITS.accent),
  };
  const sum =
    SHARE.edges * terms.edges +
    SHARE.ground * terms.ground +
    SHARE.quiet * terms.quiet +
    SHARE.accent * terms.accent;
  return { terms, weakest, worth: sum * (1 - 0.8 * worst) };
}
