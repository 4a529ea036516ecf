// Operations of plane groups put together and undone, in whole numbers throughout.
import { type Operation, TWELFTHS } from "../../src/geometry/symmetry/operation.ts";

/** The operation that does `first`, then `second`, its translation brought into the cell. */
export function follow(first: Operation, second: Operation): Operation {
  const [a, b, c, d, p, q] = first;
  const [A, B, C, D, P, Q] = second;
  return [
    A * a + B * c + 0,
    A * b + B * d + 0,
    C * a + D * c + 0,
    C * b + D * d + 0,
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
