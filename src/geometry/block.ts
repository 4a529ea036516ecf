import type { Size, Vector } from "./lattice.ts";

/** Greatest common divisor of two whole numbers, not negative; that of 0 and 0 is 0. */
export function commonDivisor(p: number, q: number): number {
  let [a, b] = [Math.abs(p), Math.abs(q)];
  while (b > 0) [a, b] = [b, a % b];
  return a;
}

/** Twice the signed area of the triangle 0, a, b: the area of a cell, exact below 2^53. */
export const cross = (a: Vector, b: Vector): number => a[0] * b[1] - a[1] * b[0];

/**
 * The smallest upright rectangle that a lattice repeats straight (µm).
 *
 * Of all i·a + j·b, the shortest that is level has i = b_y / g and j = -a_y / g with g = gcd(a_y, b_y),
 * so the block is |det| / g wide; its height likewise. The vectors must not be collinear.
 */
export function blockOf(a: Vector, b: Vector): Size {
  const cell = Math.abs(cross(a, b));
  return { width: cell / commonDivisor(a[1], b[1]), height: cell / commonDivisor(a[0], b[0]) };
}

/** The two shortest vectors that span the same lattice (the reduction of Lagrange and Gauss). */
export function shortestPair(a: Vector, b: Vector): readonly [Vector, Vector] {
  let [short, long] = [a, b];
  for (;;) {
    if (dot(short, short) > dot(long, long)) [short, long] = [long, short];
    const times = Math.round(dot(short, long) / dot(short, short));
    if (times === 0) return [short, long];
    const next: Vector = [long[0] - times * short[0], long[1] - times * short[1]];
    if (dot(next, next) >= dot(long, long)) return [short, long];
    long = next;
  }
}

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1];
