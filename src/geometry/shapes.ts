import { reversePath } from "./matrix.ts";
import { joinPaths, type Path } from "./path.ts";
import { pen } from "./pen.ts";

/**
 * Length of the controls of a quarter circle of radius 1: 4 (√2 - 1) / 3.
 * Four such cubics stay within 2.73e-4 of the circle, all of it outwards.
 */
export const QUARTER = 0.5522847498;

/**
 * Handle of the cubic that stands for an arc of radius 1 whose sweep has the cosine `cosSweep`:
 * 4/3 tan(sweep / 4), with the tangent by halving (tan(a/2) = t / (1 + √(1 + t²)), t = tan a).
 * Good to about 2.7e-4 up to a quarter turn.
 */
export function arcHandle(cosSweep: number): number {
  const cos = Math.max(-0.999999, Math.min(1, cosSweep));
  const half = Math.sqrt((1 - cos) / (1 + cos));
  return ((4 / 3) * half) / (1 + Math.sqrt(1 + half * half));
}

/** An ellipse about (x, y) in mm, half axes `rx` and `ry`, by four cubics. */
export function ellipse(x: number, y: number, rx: number, ry: number = rx): Path {
  return egg(x, y, [ry, rx, ry, rx]);
}

/**
 * Four quarter ellipses that share their axes: an egg, or a circle when all reaches are alike.
 * `reach` is how far it goes up, right, down and left of (x, y), in mm; `up` is where its top points.
 */
export function egg(
  x: number,
  y: number,
  reach: readonly [up: number, right: number, down: number, left: number],
  up: readonly [number, number] = [0, -1],
): Path {
  const [ux, uy] = up;
  const axes = [
    [ux, uy],
    [-uy, ux],
    [-ux, -uy],
    [uy, -ux],
  ] as const;
  const at = (i: number, along: number): readonly [number, number] => {
    const [a, b] = [axes[i & 3]!, axes[(i + 1) & 3]!];
    const [r, s] = [reach[i & 3]!, along * reach[(i + 1) & 3]!];
    return [x + a[0] * r + b[0] * s, y + a[1] * r + b[1] * s];
  };
  const draw = pen().moveTo(...at(0, 0));
  for (let i = 0; i < 4; i++) {
    const [a, b] = [axes[i]!, reach[i]! * QUARTER];
    const [ex, ey] = at(i + 1, 0);
    draw.curveTo(...at(i, QUARTER), ex + a[0] * b, ey + a[1] * b, ex, ey);
  }
  return draw.path();
}

/** `outer` with `hole` cut out of it, as an outer contour and a contour that runs the other way. */
export const holed = (outer: Path, hole: Path): Path => joinPaths([outer, reversePath(hole)]);

/** How often the slopes of a loop are mended; the error at least halves each time. */
const ROUNDS = 50;

/**
 * The smooth closed curve through points x, y, x, y … in mm, three or more, given clockwise on the page.
 *
 * A periodic cubic spline over chord lengths: slope and curvature run on across every point. Its slopes
 * solve a cyclic system of equations that is diagonally dominant, by the method of Gauss and Seidel.
 */
export function loop(points: readonly number[]): Path {
  const n = points.length / 2;
  const at = (i: number, axis: number): number => points[2 * ((i + n) % n) + axis]!;
  const chords = Array.from({ length: n }, (_, i) => {
    const [dx, dy] = [at(i + 1, 0) - at(i, 0), at(i + 1, 1) - at(i, 1)];
    return Math.sqrt(dx * dx + dy * dy);
  });
  const slopes = [0, 1].map((axis) => {
    const slope = new Array<number>(n).fill(0);
    for (let round = 0; round < ROUNDS; round++)
      for (let i = 0; i < n; i++) {
        const [before, after] = [chords[(i + n - 1) % n]!, chords[i]!];
        const rise =
          (after * (at(i, axis) - at(i - 1, axis))) / before +
          (before * (at(i + 1, axis) - at(i, axis))) / after;
        const pull = after * slope[(i + n - 1) % n]! + before * slope[(i + 1) % n]!;
        slope[i] = (3 * rise - pull) / (2 * (before + after));
      }
    return slope;
  });
  const control = (i: number, axis: number, reach: number): number =>
    at(i, axis) + (slopes[axis]![(i + n) % n]! * reach) / 3;
  const draw = pen().moveTo(at(0, 0), at(0, 1));
  for (let i = 0; i < n; i++) {
    const h = chords[i]!;
    draw.curveTo(
      control(i, 0, h),
      control(i, 1, h),
      control(i + 1, 0, -h),
      control(i + 1, 1, -h),
      at(i + 1, 0),
      at(i + 1, 1),
    );
  }
  return draw.path();
}
