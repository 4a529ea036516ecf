import { cosTurns, sinTurns } from "../seed/trigonometry.ts";
import type { Path } from "./path.ts";

/** x' = a x + c y + e, y' = b x + d y + f; e and f in µm. The order is that of SVG's `matrix()`. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const identity: Matrix = [1, 0, 0, 1, 0, 0];

/** The matrix that does `first`, then `second`. */
export function compose(first: Matrix, second: Matrix): Matrix {
  const [a, b, c, d, e, f] = first;
  const [A, B, C, D, E, F] = second;
  return [A * a + C * b, B * a + D * b, A * c + C * d, B * c + D * d, A * e + C * f + E, B * e + D * f + F];
}

/** Flip (left to right), scale, turn (clockwise on the page), then move to (x, y) µm: a placement's matrix. */
export function placing(x: number, y: number, turn = 0, scale = 1, flip = false): Matrix {
  const c = cosTurns(turn) * scale;
  const s = sinTurns(turn) * scale;
  const h = flip ? -1 : 1;
  return [c * h + 0, s * h + 0, -s + 0, c, x, y];
}

/** Whether a matrix maps whole micrometres to whole micrometres. */
export const isWhole = (m: Matrix): boolean => m.every(Number.isInteger);

/** A path under a matrix, rounded to whole µm; contours keep their orientation (reversed when it mirrors). */
export function transformPath(path: Path, m: Matrix): Path {
  const [a, b, c, d, e, f] = m;
  const from = path.points;
  const points = new Int32Array(from.length);
  for (let i = 0; i < from.length; i += 2) {
    const x = from[i]!;
    const y = from[i + 1]!;
    points[i] = Math.round(a * x + c * y + e);
    points[i + 1] = Math.round(b * x + d * y + f);
  }
  const moved = { points, contours: path.contours };
  return a * d - b * c < 0 ? reversePath(moved) : moved;
}

/** A path moved by whole µm: exact. */
export function movePath(path: Path, dx: number, dy: number): Path {
  const points = new Int32Array(path.points.length);
  for (let i = 0; i < points.length; i += 2) {
    points[i] = path.points[i]! + dx;
    points[i + 1] = path.points[i + 1]! + dy;
  }
  return { points, contours: path.contours };
}

/** The same contours, each run through the other way round. */
export function reversePath(path: Path): Path {
  const points = new Int32Array(path.points.length);
  let from = 0;
  for (const curves of path.contours) {
    const count = curves * 3;
    for (let k = 0; k < count; k++) {
      const source = from + 2 * ((count - k) % count);
      points[from + 2 * k] = path.points[source]!;
      points[from + 2 * k + 1] = path.points[source + 1]!;
    }
    from += count * 2;
  }
  return { points, contours: path.contours };
}
