import { flatten, type Ring, ringArea } from "./flatten.ts";
import type { Matrix } from "./matrix.ts";
import type { Path } from "./path.ts";

/** Most sides in one run: few enough that a run's box hugs it, enough that most runs are passed over whole. */
const RUN = 8;

/**
 * Closed polygons laid out for distance tests (µm): points in one array, their sides bundled into runs
 * with a box each, so that whole runs can be passed over.
 */
export interface Outline {
  /** x, y, x, y …; every ring ends with its first point again, so sides join neighbours only. */
  readonly points: Float64Array;
  /** First point of every ring, then the number of points. */
  readonly rings: Int32Array;
  /** First and last point of every run of sides, two numbers a run; a run never spans two rings. */
  readonly runs: Int32Array;
  /** minX, minY, maxX, maxY of every run. */
  readonly boxes: Float64Array;
  /** minX, minY, maxX, maxY of the whole; min above max when there is no point. */
  readonly box: Float64Array;
}

/** Polygons (at least three points each; the last joins the first) as an outline. */
export function outlineOfRings(rings: readonly ArrayLike<number>[]): Outline {
  const solid = rings.filter((ring) => ring.length >= 6);
  const count = solid.reduce((sum, ring) => sum + ring.length / 2 + 1, 0);
  const points = new Float64Array(count * 2);
  const starts = new Int32Array(solid.length + 1);
  const runs: number[] = [];
  let at = 0;
  solid.forEach((ring, index) => {
    starts[index] = at;
    points.set(ring, at * 2);
    const last = at + ring.length / 2;
    points[last * 2] = ring[0]!;
    points[last * 2 + 1] = ring[1]!;
    for (let from = at; from < last; from += RUN) runs.push(from, Math.min(from + RUN, last));
    at = last + 1;
  });
  starts[solid.length] = at;
  const outline = {
    points,
    rings: starts,
    runs: Int32Array.from(runs),
    boxes: new Float64Array(runs.length * 2),
    box: new Float64Array(4),
  };
  measureBoxes(outline);
  return outline;
}

/** A path flattened to within `tolerance` µm, holes included. */
export const outlineOf = (path: Path, tolerance: number): Outline => outlineOfRings(flatten(path, tolerance));

/** The outer contours of a path, flattened to within `tolerance` µm: its holes count as filled. */
export function silhouetteOf(path: Path, tolerance: number): Ring[] {
  return flatten(path, tolerance).filter((ring) => ringArea(ring) > 0);
}

/** An outline of the same make without values, to be written by {@link transformOutline}. */
export const blankOutline = (like: Outline): Outline => ({
  points: new Float64Array(like.points.length),
  rings: like.rings,
  runs: like.runs,
  boxes: new Float64Array(like.boxes.length),
  box: new Float64Array(4),
});

/** Writes `source` under a matrix into `target`, an outline of the same make, and returns it. */
export function transformOutline(
  source: Outline,
  m: Matrix,
  target: Outline = blankOutline(source),
): Outline {
  const [a, b, c, d, e, f] = m;
  const from = source.points;
  const to = target.points;
  for (let i = 0; i < from.length; i += 2) {
    const x = from[i]!;
    const y = from[i + 1]!;
    to[i] = a * x + c * y + e;
    to[i + 1] = b * x + d * y + f;
  }
  measureBoxes(target);
  return target;
}

/** A copy that later writes to the original leave alone. */
export const copyOutline = (outline: Outline): Outline => ({
  points: outline.points.slice(),
  rings: outline.rings,
  runs: outline.runs,
  boxes: outline.boxes.slice(),
  box: outline.box.slice(),
});

function measureBoxes(outline: Outline): void {
  const { points, runs, boxes, box } = outline;
  let [allMinX, allMinY, allMaxX, allMaxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let r = 0; r < runs.length; r += 2) {
    let minX = Infinity;
    let minY = Infinity;
    let maxX = -Infinity;
    let maxY = -Infinity;
    const last = runs[r + 1]! * 2;
    for (let i = runs[r]! * 2; i <= last; i += 2) {
      const x = points[i]!;
      const y = points[i + 1]!;
      if (x < minX) minX = x;
      if (x > maxX) maxX = x;
      if (y < minY) minY = y;
      if (y > maxY) maxY = y;
    }
    const o = r * 2;
    boxes[o] = minX;
    boxes[o + 1] = minY;
    boxes[o + 2] = maxX;
    boxes[o + 3] = maxY;
    if (minX < allMinX) allMinX = minX;
    if (minY < allMinY) allMinY = minY;
    if (maxX > allMaxX) allMaxX = maxX;
    if (maxY > allMaxY) allMaxY = maxY;
  }
  box[0] = allMinX;
  box[1] = allMinY;
  box[2] = allMaxX;
  box[3] = allMaxY;
}
