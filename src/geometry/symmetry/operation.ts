/**
 * An operation in coordinates of a lattice, all whole numbers, so that nothing is ever rounded:
 * x' = a x + b y + p/12 and y' = c x + d y + q/12, where (1, 0) and (0, 1) are the edges of the cell.
 * The order is a, b, c, d, p, q.
 */
export type Operation = readonly [a: number, b: number, c: number, d: number, p: number, q: number];

/** Parts of a cell that translations are counted in. */
export const TWELFTHS = 12;

/** The operation that does `first`, then `second`, its translation brought into the cell. */
export function follow(first: Operation, second: Operation): Operation {
  const [a, b, c, d, p, q] = first;
  const [A, B, C, D, P, Q] = second;
  return [
    A * a + B * c,
    A * b + B * d,
    C * a + D * c,
    C * b + D * d,
    wrapped(A * p + B * q + P),
    wrapped(C * p + D * q + Q),
  ];
}

/** The operation that undoes another, its translation brought into the cell. */
export function undo([a, b, c, d, p, q]: Operation): Operation {
  const det = a * d - b * c; // 1 or -1, its own inverse
  const [A, B, C, D] = [d * det + 0, -b * det + 0, -c * det + 0, a * det + 0];
  return [A, B, C, D, wrapped(-(A * p + B * q)), wrapped(-(C * p + D * q))];
}

const wrapped = (n: number): number => n - TWELFTHS * Math.floor(n / TWELFTHS);
