import {
  type Arrangement,
  cellAreaOf,
  cellsInBlock,
  type Lattice,
  type Vector,
} from "../../geometry/lattice.ts";
import { compose, type Matrix, placing } from "../../geometry/matrix.ts";
import { type Outline, outlineOf, transformOutline } from "../../geometry/outline.ts";
import { areaOf } from "../../geometry/path.ts";
import type { Placement } from "../../layout/layout.ts";
import type { Motif } from "../../motif/motif.ts";
import { type Buckets, bucketsOf } from "./buckets.ts";

/** One placement under one operation; it stands in every cell of the block. */
export interface Copy {
  readonly placement: number;
  /** From the motif to the first cell (µm). */
  readonly matrix: Matrix;
  /** The real outline, holes open, flattened within the scene's tolerance. */
  readonly outline: Outline;
  /** Area of its ink (µm²). */
  readonly area: number;
}

/** A tile's motifs where they stand, ready to be measured. */
export interface Scene {
  readonly motifs: readonly Motif[];
  readonly placements: readonly Placement[];
  readonly lattice: Lattice;
  /** Where the cells of the block lie, its own corner first. */
  readonly cells: readonly Vector[];
  /** All copies in one cell: of each placement in turn, the one under the identity first. */
  readonly copies: readonly Copy[];
  /** The operations of the repeat, the identity first. */
  readonly operations: readonly Matrix[];
  /** Area of one cell (µm²). */
  readonly cellArea: number;
  /** Side of the square that each motif would have to itself, its weight being its area (µm). */
  readonly spacing: number;
  /** How far flattened outlines stray from the curves (µm). */
  readonly tolerance: number;
  /** All images in the block; number `copy * cells.length + cell`. */
  readonly buckets: Buckets;
}

/** Flattening for all but the final distances (µm), as a share of the spacing and within bounds. */
const FINENESS = 1 / 1000;
const FINEST = 2;
const COARSEST = 25;

/** Lays a tile's motifs out to be measured. */
export function sceneOf(
  motifs: readonly Motif[],
  placements: readonly Placement[],
  { lattice, operations }: Arrangement,
): Scene {
  const cells = cellsInBlock(lattice);
  const { block } = lattice;
  const cellArea = cellAreaOf(lattice);
  const areas = motifs.map((motif) => areaOf(motif.outline));
  const largest = motifs.map(() => 0);
  let [sum, squares] = [0, 0];
  for (const { motif, scale } of placements) {
    const area = areas[motif]! * scale * scale;
    sum += area;
    squares += area * area;
    largest[motif] = Math.max(largest[motif]!, scale);
  }
  const effective = squares > 0 ? (sum * sum) / squares : 1;
  const spacing = Math.sqrt(cellArea / (effective * operations.length));
  const tolerance = Math.max(FINEST, Math.min(COARSEST, spacing * FINENESS));
  const flat = motifs.map((motif, i) =>
    largest[i]! > 0 ? outlineOf(motif.outline, tolerance / largest[i]!) : undefined,
  );
  const copies = placements.flatMap(({ motif, x, y, turn, scale, flip }, placement) =>
    operations.map((operation, i): Copy => {
      const placed = placing(x, y, turn, scale, flip);
      const matrix = i === 0 ? placed : compose(placed, operation);
      const outline = transformOutline(flat[motif]!, matrix);
      return { placement, matrix, outline, area: areas[motif]! * scale * scale };
    }),
  );
  const boxes = copies.flatMap(({ outline: { box } }) =>
    cells.map(([dx, dy]) => [box[0]! + dx, box[1]! + dy, box[2]! + dx, box[3]! + dy]),
  );
  const apart = Math.sqrt((block.width * block.height) / boxes.length);
  return {
    ...{ motifs, placements, lattice, cells, copies, cellArea, spacing, tolerance },
    operations,
    buckets: bucketsOf(boxes, block, apart / 2),
  };
}

/** Calls `visit` with every copy, and where it is moved to, whose box may come within `reach` of `around`. */
export function copiesNear(
  { buckets, cells, copies }: Scene,
  around: ArrayLike<number>,
  reach: number,
  visit: (copy: Copy, dx: number, dy: number, index: number) => void,
): void {
  buckets.near(around, reach, (item, dx, dy) => {
    const index = Math.floor(item / cells.length);
    const [cx, cy] = cells[item - index * cells.length]!;
    visit(copies[index]!, cx + dx, cy + dy, index);
  });
}

/**
 * Whether a copy of a placement, moved by (dx, dy), is that placement where it stands, or its image under an operation
 * that leaves its origin where it is: a motif seated on a mirror line or a centre of rotation is one with that image.
 */
export function isSelf(
  { placements }: Scene,
  placement: number,
  copy: Copy,
  dx: number,
  dy: number,
): boolean {
  if (copy.placement !== placement) return false;
  const { x, y } = placements[placement]!;
  return Math.abs(copy.matrix[4] + dx - x) <= SEATED && Math.abs(copy.matrix[5] + dy - y) <= SEATED;
}

/** How far rounding may move an origin off the place that an operation leaves alone (µm). */
const SEATED = 2;
