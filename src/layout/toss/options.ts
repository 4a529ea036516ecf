import type { DrawnMotif } from "../layout.ts";

/** One kind of motif in a toss, with all its drawings. */
export interface TossEntry {
  readonly drawings: readonly DrawnMotif[];
  /** How many of these for each one of a kind with share 1. */
  readonly share: number;
  /** Sizes it may have, as factors of the drawn size. */
  readonly scale: readonly [min: number, max: number];
  /** Distance it wants from everything beyond the layout's gap (mm). */
  readonly gap?: number;
}

/** How full a toss is. */
export type Density = "airy" | "even" | "packed";

/** Which ways up motifs may stand: upright; or upside down; or in quarter turns; or any way. */
export type Direction = "one-way" | "two-way" | "four-way" | "tossed";

/** A toss, checked and complete. */
export interface TossOptions {
  /** Least distance between any two outlines, copies included (mm). */
  readonly gap: number;
  readonly density: Density;
  /** Exactly so many motifs in the unit, as far apart as they still fit; undefined: as many as fit. */
  readonly count: number | undefined;
  readonly direction: Direction;
  /** Whether half of the motifs are mirrored. */
  readonly flip: boolean;
  /** How strongly motifs of one kind keep apart, 0 to 1. */
  readonly spread: number;
  readonly entries: readonly TossEntry[];
}
