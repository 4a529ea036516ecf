import type { Ring } from "../../../../geometry/flatten.ts";
import { type Corner, cornersOf } from "./corners.ts";
import { evenPoints } from "./even-points.ts";
import { smoothHidden } from "./hidden.ts";
import { cross, minus, type Point, size } from "./point.ts";
import { fitRun } from "./run.ts";
import { meeting, type Side, sideThrough } from "./side.ts";
import type { Span } from "./span.ts";
import { FARTHEST, wayAt } from "./way.ts";

/** An outline of cubic curves, in pixels. */
export interface Outline {
  readonly spans: readonly Span[];
  /** How far it lies from where the picture's edge is, corners apart; pixels. */
  readonly far: number;
  readonly corners: number;
}

/**
 * Curves along a ring of pixels' edges within `tolerance` pixels, with corners where it has corners.
 * @param softness see {@link cornersOf}
 */
export function fitOutline(
  ring: Ring,
  tolerance: number,
  softness: number,
  isHidden: (p: Point) => boolean = () => false,
): Outline {
  const points = smoothHidden(evenPoints(ring), isHidden);
  const corners = cornersOf(points, softness);
  const spans = corners.length > 0 ? cornered(points, corners, tolerance) : smooth(points, tolerance);
  return { spans, far: spans.reduce((far, span) => Math.max(far, span.far), 0), corners: corners.length };
}

function cornered(points: readonly Point[], corners: readonly Corner[], tolerance: number): Span[] {
  const n = points.length;
  const inner = corners.map((corner, k): Point[] => {
    const next = corners[(k + 1) % corners.length]!;
    const end = next.at + (k + 1 < corners.length ? 0 : n);
    const run: Point[] = [];
    for (let i = corner.at + corner.skip; i <= end - next.skip; i++) run.push(points[i % n]!);
    return run;
  });
  const sides = inner.map((run) => straightSide(run, tolerance));
  const tips = corners.map((corner, k) => {
    const [before, after] = [sides[(k + sides.length - 1) % sides.length], sides[k]];
    const point = before || after ? meeting(before ?? corner.before, after ?? corner.after) : undefined;
    return point && size(minus(point, corner.point)) < 1 ? point : corner.point;
  });
  return inner.flatMap((run, k) =>
    fitRun([tips[k]!, ...run, tips[(k + 1) % tips.length]!], undefined, undefined, tolerance),
  );
}

/** The straight line along a whole side, if it is one: it says better than its ends where its corners are. */
function straightSide(run: readonly Point[], tolerance: number): Side | undefined {
  if (run.length < 6) return undefined;
  const side = sideThrough(run);
  return run.every((p) => Math.abs(cross(minus(p, side.middle), side.way)) < tolerance / 2)
    ? side
    : undefined;
}

/** An outline without corners starts at its top, where a designer would put a node, and ends as it starts. */
function smooth(points: readonly Point[], tolerance: number): Span[] {
  const n = points.length;
  let top = 0;
  for (let i = 1; i < n; i++) if (points[i]![1] < points[top]![1]) top = i;
  const run = Array.from({ length: n + 1 }, (_, i) => points[(top + i) % n]!);
  const reach = Math.min(FARTHEST, Math.floor(n / 4));
  const around = Array.from({ length: 2 * reach + 1 }, (_, i) => points[(top - reach + i + n) % n]!);
  const way = wayAt(around, reach);
  return fitRun(run, way, [-way[0], -way[1]], tolerance);
}
