import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";

/** A point or a direction on the page, in mm, y downwards. */
export type Vector = readonly [x: number, y: number];

/** The direction `turn` clockwise from straight up. */
export const heading = (turn: number): Vector => [sinTurns(turn), -cosTurns(turn)];

/** A direction of length 1; straight up for the zero vector. */
export function unit(x: number, y: number): Vector {
  const size = Math.sqrt(x * x + y * y);
  return size === 0 ? [0, -1] : [x / size, y / size];
}

/** `from` at 0, `to` at 1, and on the straight line between. */
export const mix = (from: number, to: number, share: number): number => from + (to - from) * share;

/** The point `far` mm from `at` in a direction. */
export const step = (at: Vector, way: Vector, far: number): Vector => [
  at[0] + way[0] * far,
  at[1] + way[1] * far,
];

/** A direction turned clockwise by `turn`. */
export function turned(way: Vector, turn: number): Vector {
  const [s, c] = heading(turn);
  return [-c * way[0] - s * way[1], s * way[0] - c * way[1]];
}
