import type { Arrangement } from "../geometry/lattice.ts";
import type { Path } from "../geometry/path.ts";
import type { Motif, MotifUse } from "../motif/motif.ts";
import type { ParamSpec } from "../params/param.ts";
import type { PieceInfo, Use } from "../params/use.ts";
import type { ExactMath } from "../seed/math.ts";
import type { Random } from "../seed/random.ts";

/** One motif where it stands: flipped, scaled, turned about its origin, then moved to (x, y). */
export interface Placement {
  /** Stable for a given seed, so that a hand adjustment can name it. */
  readonly id: string;
  /** Index into the tile's motifs. */
  readonly motif: number;
  /** Whole micrometres from the unit's upper left corner. */
  readonly x: number;
  readonly y: number;
  /** Turns clockwise, 0 up to 1. */
  readonly turn: number;
  readonly scale: number;
  /** Mirrored left to right before it is turned. */
  readonly flip: boolean;
}

/** A placement as a layout hands it over. */
export interface LaidPlacement extends Placement {
  /**
   * Room (µm) that it wants around it on top of the gap of the layouts after it, in `layered`: of two motifs that
   * both want some, the larger counts. No part of the tile. Default 0.
   */
  readonly extra?: number;
}

/** A drawn motif with its number in the tile's list. */
export interface DrawnMotif {
  readonly index: number;
  readonly motif: Motif;
}

/** A motif that stands where it is when a layout comes to be worked out. */
export interface Standing {
  readonly placement: Placement;
  readonly motif: Motif;
  /** Room (µm) that it wants around it on top of the gap of others. Default 0. */
  readonly extra?: number;
}

/** What a layout gets besides its parameters. */
export interface LayoutTools {
  /** Lattice and operations that the placements will be repeated under (µm). */
  readonly arrangement: Arrangement;
  /** The drawings of a motif, one for each variant; the same use gives the same drawings. */
  readonly draw: (use: MotifUse) => readonly DrawnMotif[];
  /** Motifs of earlier layouts of the same pattern: they stay where they are, and this layout keeps clear of them. */
  readonly standing: readonly Standing[];
  /** Motifs of this layout that its user holds: they stand as they are, under their ids, and count for their shares. */
  readonly held: readonly Standing[];
  readonly random: Random;
  readonly math: ExactMath;
  /** To be awaited now and then: reports progress (0 to 1) and throws when the work was called off. */
  readonly step: (done: number) => Promise<void>;
}

/** What a layout returns: placements, or placements and the gap that it promises between any two of them. */
export type LaidOut =
  | readonly LaidPlacement[]
  | {
      readonly placements: readonly LaidPlacement[];
      /** Least distance (µm) between the outlines of any two motifs, copies included, that the layout promises. */
      readonly gap: number;
    };

/** A layout piece: see {@link defineLayout}. */
export interface LayoutPiece extends PieceInfo<ParamSpec> {
  readonly kind: "layout";
  readonly place: (params: never, tools: LayoutTools) => LaidOut | Promise<LaidOut>;
  /**
   * Which motif the placement of a given id shows, whether there is one by that id or not; undefined for an id that
   * can never be. Only a layout that packs around `tools.held` has it: in others, held motifs are put in afterwards.
   */
  readonly motifOf?: (params: never, id: string) => MotifUse | undefined;
}

declare const roleType: unique symbol;

/** A layout put to use; `R` is every role that its motifs fill. */
export interface LayoutUse<R extends string = string> extends Use {
  /** For the types alone; never set. */
  readonly [roleType]?: R;
}

/**
 * `T` with every motif and every layout inside it filling the roles `R`: lets the types collect the roles of a
 * layout's motifs.
 */
export type WithRoles<T, R extends string> = T extends MotifUse
  ? MotifUse<R>
  : T extends LayoutUse
    ? LayoutUse<R>
    : T extends Path
      ? T
      : T extends object
        ? { readonly [K in keyof T]: WithRoles<T[K], R> }
        : T;
