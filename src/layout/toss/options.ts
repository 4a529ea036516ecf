import type { DrawnMotif, Standing } from "../layout.ts";
import type { Confines } from "./confines.ts";

/** One kind of motif in a toss, with all its drawings. */
export interface TossEntry {
  readonly drawings: readonly DrawnMotif[];
  /** How many of these for each one of a kind with share 1. */
  readonly share: number;
  /** Sizes it may have, as factors of the drawn size. */
  readonly scale: readonly [min: number, max: number];
  /** Distance it wants from everything beyond the layout's gap (mm). */
  readonly gap?: number;
  /** Where its motifs sit: see `takeSeats`. Default "anywhere". */
  readonly seat?: Seat;
  /** Its number in the user's list, from 0, where that is another: for messages. */
  readonly listed?: number;
}

/** Places that motifs may be bound to: none, mirror lines, centres of rotation, or both of these. */
export type Seat = "anywhere" | "mirrors" | "centres" | "both";

/** A motif that stands where it is while the rest of a toss is packed around it. */
export interface Fixed extends Standing {
  /** The entry that it is one of. */
  readonly entry: number;
  /** Room that it wants on top of the gap (µm). */
  readonly extra: number;
}

/** How full a toss is. */
export type Density = "airy" | "even" | "packed";

/** Which ways up motifs may stand: upright; or upside down; or in quarter turns; or any way; or at these angles (turns). */
export type Direction = "one-way" | "two-way" | "four-way" | "tossed" | readonly number[];

/** A toss, checked and complete. */
export interface TossOptions extends Confines {
  /** Least distance between any two outlines, copies included (mm). */
  readonly gap: number;
  readonly density: Density;
  /** Exactly so many motifs in the unit, as far apart as they still fit; undefined: as many as fit. */
  readonly count: number | undefined;
  /** Share of the ground that ink is to cover, as nearly as can be, as far apart as they still fit. */
  readonly coverage?: number | undefined;
  readonly direction: Direction;
  /** Whether half of the motifs are mirrored. */
  readonly flip: boolean;
  /** How strongly motifs of one kind keep apart, 0 to 1. */
  readonly spread: number;
  /** Hollows that a disc of this share of the motif's radius cannot enter are kept free. Default 0. */
  readonly hollows?: number;
  readonly entries: readonly TossEntry[];
  /** Motifs of these entries that stand already (they are among those that stand) and count for the shares. */
  readonly fixed?: readonly Fixed[] | undefined;
}
