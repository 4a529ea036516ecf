/**
 * Closed contours of cubic Béziers, in whole micrometres, y downwards.
 *
 * A contour of n curves is 3n points, six numbers a curve: its start, its two controls; it ends where
 * the next curve starts, and the last ends at the first point. A straight side has its controls on its ends.
 * Filling is nonzero; outer contours have positive area, holes negative.
 */
export interface Path {
  /** x, y, x, y … of all contours, one after the other (µm). */
  readonly points: Int32Array;
  /** How many curves each contour has, in order. */
  readonly contours: readonly number[];
}

/** A path without contours. */
export const emptyPath: Path = Object.freeze({ points: new Int32Array(0), contours: Object.freeze([]) });

/** Numbers that one curve takes in `points`. */
export const CURVE = 6;

/** Calls `visit` with the first index into `points` and one past the last, for each contour. */
export function eachContour(path: Path, visit: (from: number, to: number, index: number) => void): void {
  let from = 0;
  path.contours.forEach((curves, index) => {
    const to = from + curves * CURVE;
    visit(from, to, index);
    from = to;
  });
}

/** All contours of several paths as one path, in order. */
export function joinPaths(paths: readonly Path[]): Path {
  if (paths.length === 1) return paths[0]!;
  const points = new Int32Array(paths.reduce((sum, p) => sum + p.points.length, 0));
  const contours: number[] = [];
  let at = 0;
  for (const path of paths) {
    points.set(path.points, at);
    at += path.points.length;
    for (const curves of path.contours) contours.push(curves);
  }
  return { points, contours };
}

/** Smallest upright box around the points and controls (µm); the curves lie within it. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Box of a path, controls included; an empty path has an empty box (min above max). */
export function boxOf(path: Path): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < path.points.length; i += 2) {
    const x = path.points[i]!;
    const y = path.points[i + 1]!;
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/**
 * Signed area enclosed, in µm², exact for cubic Béziers up to rounding of doubles:
 * the integral of (x dy - y dx) / 2 over each curve in its Bernstein form (Green's theorem).
 */
export function areaOf(path: Path): number {
  const p = path.points;
  let sum = 0;
  eachContour(path, (from, to) => {
    const ox = p[from]!;
    const oy = p[from + 1]!;
    for (let i = from; i < to; i += CURVE) {
      const end = i + CURVE < to ? i + CURVE : from;
      const x0 = p[i]! - ox;
      const y0 = p[i + 1]! - oy;
      const x1 = p[i + 2]! - ox;
      const y1 = p[i + 3]! - oy;
      const x2 = p[i + 4]! - ox;
      const y2 = p[i + 5]! - oy;
      const x3 = p[end]! - ox;
      const y3 = p[end + 1]! - oy;
      sum +=
        3 *
        ((y3 - y0) * (x1 + x2) -
          (x3 - x0) * (y1 + y2) +
          y1 * (x0 - x2) -
          x1 * (y0 - y2) +
          y3 * (x2 + x0 / 3) -
          x3 * (y2 + y0 / 3));
    }
  });
  return sum / 20;
}

/** Whether a value from outside is a sound path: whole curves, whole numbers, within 100 m of the origin. */
export function isPath(value: unknown): value is Path {
  if (typeof value !== "object" || value === null) return false;
  const { points, contours } = value as Partial<Path>;
  if (!(points instanceof Int32Array) || !Array.isArray(contours)) return false;
  let curves = 0;
  for (const count of contours as unknown[]) {
    if (typeof count !== "number" || !Number.isInteger(count) || count < 1) return false;
    curves += count;
  }
  return curves * CURVE === points.length && points.every((v) => v >= -FARTHEST && v <= FARTHEST);
}

/** Farthest coordinate taken, in µm (100 m), so that sums of a few stay within 32 bits. */
const FARTHEST = 100_000_000;
