import { type Cubic, fitCubic, nearer, pointAt } from "./cubic.ts";
import { dot, minus, type Point, size, unit } from "./point.ts";

/** Rounds in which points move along the curve to where they are nearest. */
const ROUNDS = 5;

/** A curve for some points, and how far it and they lie from each other. */
export interface Span {
  readonly curve: Cubic;
  /** Pixels. */
  readonly far: number;
  /** Whether it is a straight side. */
  readonly straight: boolean;
}

/**
 * One curve through points within `tolerance` pixels, or nothing. A direction that is given is kept at its end:
 * `last` points backwards, into the span. Points and curve are held against each other both ways. The first curve that
 * is near enough will do, unless the `best` is wanted.
 */
export function spanOf(
  points: readonly Point[],
  first: Point | undefined,
  last: Point | undefined,
  tolerance: number,
  best = false,
): Span | undefined {
  const [a, d] = [points[0]!, points[points.length - 1]!];
  if (points.length === 2) return { curve: side(a, d), far: 0, straight: true };
  const flat = first || last ? undefined : straight(points, tolerance);
  if (flat) return flat;
  if (points.length === 3) {
    const [b, c] = [first ?? unit(minus(points[1]!, a)), last ?? unit(minus(points[1]!, d))];
    const third = size(minus(d, a)) / 3;
    const curve: Cubic = [
      a,
      [a[0] + b[0] * third, a[1] + b[1] * third],
      [d[0] + c[0] * third, d[1] + c[1] * third],
      d,
    ];
    const far = deviation(points, [0, 0.5, 1], curve);
    return far <= tolerance ? { curve, far, straight: false } : undefined;
  }
  // Long runs are fitted by some of their points, and then held against all.
  const stride = Math.max(1, Math.floor(points.length / 60));
  const places = Array.from({ length: Math.floor((points.length - 2) / stride) + 1 }, (_, k) => k * stride);
  places.push(points.length - 1);
  const few = places.map((i) => points[i]!);
  let ts = byLength(few);
  let found: Span | undefined;
  for (let round = 0; round < ROUNDS; round++) {
    const curve = fitCubic(few, ts, first, last);
    if (!curve) return undefined;
    ts = ts.map((t, i) => nearer(curve, few[i]!, t));
    const far = deviation(few, ts, curve);
    if (far <= tolerance) {
      const all = stride === 1 ? far : deviation(points, spread(points, places, ts, curve), curve);
      if (all <= Math.min(tolerance, found?.far ?? tolerance)) found = { curve, far: all, straight: false };
      if (found && !best) return found;
    }
    if (far > 8 * tolerance) return found;
  }
  return found;
}

/** Where all points lie on a curve, from where some of them do. */
function spread(
  points: readonly Point[],
  places: readonly number[],
  ts: readonly number[],
  curve: Cubic,
): readonly number[] {
  const found: number[] = [];
  let k = 0;
  points.forEach((p, i) => {
    while (k + 2 < places.length && places[k + 1]! <= i) k++;
    const share = (i - places[k]!) / (places[k + 1]! - places[k]!);
    found.push(nearer(curve, p, ts[k]! + (ts[k + 1]! - ts[k]!) * share));
  });
  return found;
}

const side = (a: Point, d: Point): Cubic => [a, a, d, d];

/** How much of the tolerance a straight side may take: it is to be straight because it was. */
const STRAIGHT = 0.6;

function straight(points: readonly Point[], tolerance: number): Span | undefined {
  const [a, d] = [points[0]!, points[points.length - 1]!];
  const way = unit(minus(d, a));
  const long = size(minus(d, a));
  let far = 0;
  for (const p of points) {
    const off = minus(p, a);
    const along = dot(off, way);
    if (along < -0.3 || along > long + 0.3) return undefined;
    far = Math.max(far, Math.abs(off[0] * way[1] - off[1] * way[0]));
    if (far > STRAIGHT * tolerance) return undefined;
  }
  return { curve: side(a, d), far, straight: true };
}

/** Where points lie along their own length, 0 to 1. */
function byLength(points: readonly Point[]): number[] {
  const sums = [0];
  for (let i = 1; i < points.length; i++) sums.push(sums[i - 1]! + size(minus(points[i]!, points[i - 1]!)));
  const whole = sums[sums.length - 1]!;
  return sums.map((sum) => sum / whole);
}

/** The farthest that points lie from a curve, or the curve halfway between them from their polygon. */
function deviation(points: readonly Point[], ts: readonly number[], curve: Cubic): number {
  let worst = 0;
  for (let i = 1; i < points.length; i++) {
    const p = points[i]!;
    const off = minus(pointAt(curve, ts[i]!), p);
    worst = Math.max(worst, dot(off, off));
    // A curve that runs back on itself between two points is not theirs.
    if (ts[i]! < ts[i - 1]! - 0.02) return Infinity;
    const between = pointAt(curve, (ts[i]! + ts[i - 1]!) / 2);
    worst = Math.max(worst, toSide(between, points[i - 1]!, p));
  }
  return Math.sqrt(worst);
}

/** Squared distance of a point from a side. */
function toSide(p: Point, a: Point, b: Point): number {
  const way = minus(b, a);
  const long = dot(way, way);
  const t = long > 0 ? Math.max(0, Math.min(1, dot(minus(p, a), way) / long)) : 0;
  const off = minus(p, [a[0] + way[0] * t, a[1] + way[1] * t]);
  return dot(off, off);
}
