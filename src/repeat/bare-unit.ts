import { cross } from "../geometry/block.ts";
import { type Arrangement, modulo, type Vector } from "../geometry/lattice.ts";

/** The upper left part of the block that makes the whole cloth when the printer steps its columns or rows. */
export interface BareUnit {
  /** mm */
  readonly width: number;
  /** mm */
  readonly height: number;
  /** "straight"; "drop": each column is set lower than the one before; "brick": each row farther right. */
  readonly step: "straight" | "drop" | "brick";
  /** By how much, in mm; 0 when straight. */
  readonly by: number;
  /** The same as a part of the height (drop) or width (brick), 0 up to 1. */
  readonly part: number;
}

/** The bare unit of an arrangement: a column of the block's full height, or a row of its full width. */
export function bareUnit({ unit, lattice }: Pick<Arrangement, "unit" | "lattice">): BareUnit {
  const { a, b, block } = lattice;
  const cell = Math.abs(cross(a, b));
  const column = { width: cell / block.height, height: block.height };
  const row = { width: block.width, height: cell / block.width };
  const isUnit = (size: typeof column): boolean => size.width === unit.width && size.height === unit.height;
  const squareness = ({ width, height }: typeof column): number =>
    Math.min(width, height) / Math.max(width, height);
  const asColumns = isUnit(column) || (!isUnit(row) && squareness(column) >= squareness(row));
  const size = asColumns ? column : row;
  const by = asColumns
    ? stepOf(a, b, 0, column.width, block.height)
    : stepOf(a, b, 1, row.height, block.width);
  return {
    width: size.width / 1000,
    height: size.height / 1000,
    step: by === 0 ? "straight" : asColumns ? "drop" : "brick",
    by: by / 1000,
    part: by / (asColumns ? block.height : block.width),
  };
}

/**
 * How far the lattice moves along one axis for a step of `across` along the other: i and j with
 * i·a + j·b = across there exist, since `across` is the greatest common divisor; the extended Euclid finds them.
 */
function stepOf(a: Vector, b: Vector, axis: 0 | 1, across: number, along: number): number {
  const other = axis === 0 ? 1 : 0;
  let [[r, s], [x, y]]: [[number, number], [number, number]] = [
    [a[axis], b[axis]],
    [modulo(a[other], along), modulo(b[other], along)],
  ];
  while (s !== 0) {
    const times = Math.floor(r / s);
    [r, s] = [s, r - times * s];
    [x, y] = [y, modulo(x - times * y, along)];
  }
  return modulo(r === across ? x : -x, along);
}
