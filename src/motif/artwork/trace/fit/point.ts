/** A point or a direction. */
export type Point = readonly [x: number, y: number];

export const minus = (p: Point, q: Point): Point => [p[0] - q[0], p[1] - q[1]];

export const dot = (p: Point, q: Point): number => p[0] * q[0] + p[1] * q[1];

export const cross = (p: Point, q: Point): number => p[0] * q[1] - p[1] * q[0];

export const size = (p: Point): number => Math.sqrt(dot(p, p));

/** A direction of length 1; the first of those given that has a length. */
export function unit(...ways: readonly Point[]): Point {
  for (const way of ways) {
    const long = size(way);
    if (long > 0) return [way[0] / long, way[1] / long];
  }
  return [1, 0];
}

/**
 * The angle from one direction to another in radians, -π to π: twice the arc tangent of its half's tangent, by the
 * polynomial 4.4.49 of Abramowitz and Stegun, good to 2e-8. Only + - * /, so that every engine decides alike.
 */
export function angle(u: Point, v: Point): number {
  const [c, s] = [dot(u, v), cross(u, v)];
  const base = Math.sqrt(c * c + s * s);
  if (base === 0) return 0;
  const [half, rest] = [Math.abs(s), base + c];
  const turned = half <= rest ? arc(half / rest) : Math.PI / 2 - arc(rest / half);
  return s < 0 ? -2 * turned : 2 * turned;
}

const ARC = [
  1, -0.3333314528, 0.1999355085, -0.1420889944, 0.1065626393, -0.07528964, 0.0429096138, -0.0161657367,
  0.0028662257,
];

function arc(x: number): number {
  const square = x * x;
  let sum = 0;
  for (let i = ARC.length - 1; i >= 0; i--) sum = sum * square + ARC[i]!;
  return x * sum;
}
