import type { Arrangement, Lattice, Size, Vector } from "../geometry/lattice.ts";
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
export interface Layer<R extends string = string> {
  readonly role: R;
  /** Whole µm; the upper left corner of each shape's box lies within the block. */
  readonly path: Path;
}

/** A straight direction in which a figure is worst. */
export interface Lane {
  readonly value: number;
  /** Which way it runs (mm across and down): the shortest vector of the lattice that way; 0, 0 when there is none. */
  readonly along: Vector;
}

/**
 * Measured facts about a tile. Lengths are in mm. Unless said otherwise they are of the finished block, which closes on
 * itself, and of the motifs' real outlines, mirrored and repeated images included. Each figure's formula and source
 * stands beside the function of `tile/figures/` that measures it. Limits are those of tossed motifs: a pattern set in rows
 * means to be otherwise.
 */
export interface Figures {
  /** Motifs in one block, mirrored and repeated copies included. */
  readonly motifs: number;
  /** Share of the block that each role's shapes take, 0..1, what is painted over included. */
  readonly coverage: Readonly<Record<string, number>>;
  /** Share of the block that all motifs cover together, 0..1, knocked-out parts left out. Below 0.25 airy, above 0.5 full. */
  readonly inkCoverage: number;
  /** The same with every motif grown by half the clearance, 0..1: what to hold against published packing densities. */
  readonly offsetCoverage: number;
  /** Least distance of any two motif images; 0 when two touch or overlap. Good: the gap that was asked for. */
  readonly clearance: number;
  /** Side of the square that each motif would have to itself, motifs weighed by their ink: the pattern's own measure. */
  readonly spacing: number;
  /** The largest circle that no ink reaches into: radius, and where its middle is in the block. */
  readonly largestHole: { readonly radius: number; readonly x: number; readonly y: number };
  /** The radius that one in twenty of the holes between motifs exceeds. The nearer to the largest, the more even. */
  readonly largeHoles: number;
  /** Power of long waves in the ink against chance, from 0: below 0.2 even, 1 as cloudy as chance. */
  readonly lumpiness: number;
  /** How far straight bands differ in ink, against chance, in the worst direction, from 0: below 0.5 even. */
  readonly tracking: Lane;
  /** Ink in the emptiest straight band over the mean, in the worst direction, 0..1: 0 is a clear lane, above 0.4 none shows. */
  readonly gutter: Lane;
  /** How alike motifs face, 0 (every way) to 1 (one way), and how likely that would be by chance (p, Rayleigh's test). */
  readonly facing: { readonly alike: number; readonly chance: number };
  /** Share of motifs whose nearest neighbour is of the same kind, and the share expected by chance. Fewer is good. */
  readonly neighbours: { readonly alike: number; readonly expected: number };
  /**
   * Large motifs of one kind that lie together, by their ids: the most unlikely such group, and its chance (0..1). Read
   * the chance first: below 0.1, three and more are a huddle, which `inspect` reports. The nearer to 1, the more they lie as
   * chance would have it: the ids then only name the least likely of groups that are all likely. No ids where no two of a
   * kind are neighbours.
   */
  readonly huddle: { readonly motifs: readonly string[]; readonly chance: number };
  /** Per role, how unevenly its ink lies over 3 x 3 parts of the cell (standard deviation over mean), and what chance gives. */
  readonly balance: Readonly<Record<string, { readonly variation: number; readonly chance: number }>>;
}

/**
 * A finished repeat without colour: built once, then coloured as often as wanted. Frozen plain data.
 * `R` is every role that its motifs fill, the ground left out.
 */
export interface Tile<R extends string = string> {
  readonly name: string;
  /** The smallest upright rectangle that repeats straight (µm). */
  readonly block: Size;
  readonly lattice: Lattice;
  /** What the placements were laid out under: unit, lattice and operations. */
  readonly arrangement: Arrangement;
  readonly motifs: readonly Motif[];
  readonly placements: readonly Placement[];
  /**
   * Least distance (µm) that the layout promised between the outlines of any two motifs, copies included and holes
   * taken for filled; left out when it promised none. Adjustments by hand may break it: `inspect` then says where.
   */
  readonly gap?: number;
  /** Back to front, the ground (which fills the block) left out. */
  readonly layers: readonly Layer<R>[];
  readonly figures: Figures;
  readonly recipe: Recipe;
  /** SHA-256 of the block and the layers in a canonical form, in hexadecimal. */
  readonly digest: string;
}
