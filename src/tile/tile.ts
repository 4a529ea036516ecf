import type { Arrangement, Lattice, Size } from "../geometry/lattice.ts";
import type { Path } from "../geometry/path.ts";
import type { Placement } from "../layout/layout.ts";
import type { Motif } from "../motif/motif.ts";
import type { Recipe } from "./recipe.ts";

/**
 * All that one role paints in one block.
 *
 * Every shape is there once; one that crosses an edge of the block goes on at the opposite edge, so whoever
 * draws the layer adds the copies that reach in (see `copiesInBlock`).
 */
export interface Layer {
  readonly role: string;
  /** Whole µm; the upper left corner of each shape's box lies within the block. */
  readonly path: Path;
}

/** Measured facts about a tile. */
export interface Figures {
  /** Motifs in one block, mirrored and repeated copies included. */
  readonly motifs: number;
  /** Share of the block that each role's shapes take, 0..1, what is painted over included. */
  readonly coverage: Readonly<Record<string, number>>;
}

/** A finished repeat without colour: built once, then coloured as often as wanted. Frozen plain data. */
export interface Tile {
  readonly name: string;
  /** The smallest upright rectangle that repeats straight (µm). */
  readonly block: Size;
  readonly lattice: Lattice;
  /** What the placements were laid out under: unit, lattice and operations. */
  readonly arrangement: Arrangement;
  readonly motifs: readonly Motif[];
  readonly placements: readonly Placement[];
  /** Back to front, the ground (which fills the block) left out. */
  readonly layers: readonly Layer[];
  readonly figures: Figures;
  readonly recipe: Recipe;
  /** SHA-256 of the block and the layers in a canonical form, in hexadecimal. */
  readonly digest: string;
}
