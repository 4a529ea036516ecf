import { commonDivisor, shortestPair } from "../../geometry/block.ts";
import type { Lattice, Vector } from "../../geometry/lattice.ts";

/** Largest multiple of either of the lattice's two shortest vectors in a direction. */
const ORDER = 3;

/** The directions in which a straight line closes soon: the shortest vectors of the lattice and their sums (µm). */
export function directionsOf({ a, b }: Lattice): Vector[] {
  const [p, q] = shortestPair(a, b);
  const found: Vector[] = [];
  for (let i = 0; i <= ORDER; i++)
    for (let j = i === 0 ? 1 : -ORDER; j <= ORDER; j++)
      if (commonDivisor(i, j) === 1) found.push([i * p[0] + j * q[0], i * p[1] + j * q[1]]);
  return found;
}
