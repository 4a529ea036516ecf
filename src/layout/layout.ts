import type { Arrangement } from "../geometry/lattice.ts";
import type { Path } from "../geometry/path.ts";
import type { Motif, MotifUse } from "../motif/motif.ts";
import type { ParamSpec } from "../params/param.ts";
import type { PieceInfo, Use } from "../params/use.ts";
import type { ExactMath } from "../seed/math.ts";
import type { Random } from "../seed/random.ts";

/** One motif where it stands: flipped, scaled, turned about its origin, then moved to (x, y). */
export interface Placement {
  /** Stable for a given seed, so that a hand adjustment can name it: 1 to 60 characters, no two alike in a tile. */
  readonly id: string;
  /** Index into the tile's motifs. */
  readonly motif: number;
  /** From the unit's left edge to the motif's origin, in whole micrometres, at most 100 m either way; it may lie outside the unit. */
  readonly x: number;
  /** From the unit's upper edge down to the motif's origin, in whole micrometres, at most 100 m either way. */
  readonly y: number;
  /** Turns clockwise, 0 up to 1 (0.25 is a quarter). */
  readonly turn: number;
  /** Size as a factor of the motif's own, 0.001 to 1000. */
  readonly scale: number;
  /** Mirrored left to right before it is turned. */
  readonly flip: boolean;
}

/** A placement as a layout hands it over. */
export interface LaidPlacement extends Placement {
  /**
   * Room (µm, 0 to 100 000 000) that it wants around it on top of the gap of the layouts after it, in `layered`: of two
   * motifs that both want some, the larger counts. No part of the tile. Default 0.
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
  /** Chance: a stream of this layout's own, which the pattern's seed fixes. Use no other, or the tile differs from run to run. */
  readonly random: Random;
  /** Mathematics whose results are the same in every JavaScript engine, angles in turns: use it in place of `Math`. */
  readonly math: ExactMath;
  /**
   * To be awaited now and then, every few hundred tries or so: reports progress (0 to 1), lets the host take a turn, and
   * throws when the work was called off. After a million calls it throws `step-budget`, so that no layout runs for ever:
   * what it throws is to be let through.
   */
  readonly step: (done: number) => Promise<void>;
}

/**
 * What a layout returns: 1 to 100 000 placements, or those and the gap that it promises between any two of them. Anything
 * else is refused with `bad-placement` or `bad-gap`, which name the layout.
 */
export type LaidOut =
  | readonly LaidPlacement[]
  | {
      readonly placements: readonly LaidPlacement[];
      /** Least distance (µm, 0 to 100 000 000) between the outlines of any two motifs, copies included, that the layout promises: `inspect` holds the tile to it. */
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
