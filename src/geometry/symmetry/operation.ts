/**
 * An operation in coordinates of a lattice, all whole numbers, so that nothing is ever rounded:
 * x' = a x + b y + p/12 and y' = c x + d y + q/12, where (1, 0) and (0, 1) are the edges of the cell.
 * The order is a, b, c, d, p, q.
 */
export type Operation = readonly [a: number, b: number, c: number, d: number, p: number, q: number];

/** Parts of a cell that translations are counted in. */
export const TWELFTHS = 12;
