import type { Ring } from "./flatten.ts";
import type { Path } from "./path.ts";

type Point = readonly [x: number, y: number];

/** Cosine of the turn at which a polygon's point is a corner rather than a point of a curve: about 31 degrees. */
const CORNER = 0.857;

/** Rounds in which points are moved along a curve to where they are nearest to it. */
const ROUNDS = 4;

/**
 * A polygon, without points that only noise explains, as a contour of cubic Béziers, none farther than about `tolerance`
 * (its unit, µm) from the polygon's points; corners stay corners. Least squares with the ends' directions given, halved at
 * the worst point until it fits (after Schneider, "An algorithm for automatically fitting digitized curves", 1990).
 */
export function fitRing(ring: Ring, tolerance: number): Path {
  const all: Point[] = Array.from({ length: ring.length / 2 }, (_, i) => [ring[2 * i]!, ring[2 * i + 1]!]);
  const n = all.length;
  const at = (i: number): Point => all[(i + n) % n]!;
  const corners = all.flatMap((p, i) => (dot(way(at(i - 1), p), way(p, at(i + 1))) < CORNER ? [i] : []));
  const out: number[] = [];
  const starts = corners.length > 0 ? corners : [0];
  starts.forEach((from, k) => {
    const to = k + 1 < starts.length ? starts[k + 1]! : starts[0]! + n;
    const run = Array.from({ length: to - from + 1 }, (_, i) => at(from + i));
    const smooth = corners.length === 0 ? between(at(-1), at(0), at(1)) : undefined;
    const back = [...run].reverse();
    const [first, last] = [smooth ?? leaving(run), smooth ?? opposite(leaving(back))];
    curvesThrough(run, first, last, tolerance, out);
  });
  return { points: Int32Array.from(out, (v) => Math.round(v)), contours: [out.length / 6] };
}

const opposite = ([x, y]: Point): Point => [-x, -y];

/** The direction in which a run leaves its start: that of its first side, less the turn that a circle has made half along it. */
function leaving(run: readonly Point[]): Point {
  const first = way(run[0]!, run[1]!);
  if (run.length < 3) return first;
  const two = way(run[0]!, run[2]!);
  return unit([2 * first[0] - two[0], 2 * first[1] - two[1]]);
}

/** The direction at a point between two others: of the circle through all three. */
function between(before: Point, p: Point, after: Point): Point {
  const [a, b] = [way(before, p), way(p, after)];
  const [s, t] = [size([p[0] - before[0], p[1] - before[1]]), size([after[0] - p[0], after[1] - p[1]])];
  return unit([a[0] * t + b[0] * s, a[1] * t + b[1] * s]);
}

/** Curves through a run of points: each is pushed as its start and its two controls. */
function curvesThrough(
  run: readonly Point[],
  first: Point,
  last: Point,
  tolerance: number,
  out: number[],
): void {
  const end = run.length - 1;
  const [a, d] = [run[0]!, run[end]!];
  if (end === 1) {
    out.push(...a, ...a, ...d);
    return;
  }
  let places = lengths(run);
  let worst = { at: 0, far: Infinity };
  for (let round = 0; round < ROUNDS; round++) {
    const [b, c] = controls(run, places, first, last);
    const curve = [a, b, c, d] as const;
    worst = farthest(run, places, curve);
    if (worst.far <= tolerance * tolerance) {
      out.push(...a, ...b, ...c);
      return;
    }
    if (worst.far > 900 * tolerance * tolerance) break;
    places = run.map((p, i) => nearer(curve, p, places[i]!));
  }
  const split = Math.max(1, Math.min(end - 1, worst.at));
  const middle = between(run[split - 1]!, run[split]!, run[split + 1]!);
  curvesThrough(run.slice(0, split + 1), first, middle, tolerance, out);
  curvesThrough(run.slice(split), middle, last, tolerance, out);
}

function controls(
  run: readonly Point[],
  places: readonly number[],
  u: Point,
  v: Point,
): readonly [Point, Point] {
  const [a, d] = [run[0]!, run[run.length - 1]!];
  let [uu, uv, vv, ur, vr] = [0, 0, 0, 0, 0];
  run.forEach((p, i) => {
    const t = places[i]!;
    const s = 1 - t;
    const [b0, b1, b2, b3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
    const rest: Point = [
      p[0] - a[0] * (b0 + b1) - d[0] * (b2 + b3),
      p[1] - a[1] * (b0 + b1) - d[1] * (b2 + b3),
    ];
    uu += b1 * b1;
    uv -= b1 * b2 * dot(u, v);
    vv += b2 * b2;
    ur += b1 * dot(u, rest);
    vr -= b2 * dot(v, rest);
  });
  const det = uu * vv - uv * uv;
  const chord = size([d[0] - a[0], d[1] - a[1]]);
  let [alpha, beta] = det > 1e-12 ? [(ur * vv - vr * uv) / det, (uu * vr - uv * ur) / det] : [0, 0];
  if (!(alpha > chord * 0.01 && beta > chord * 0.01 && alpha < chord * 3 && beta < chord * 3))
    alpha = beta = chord / 3;
  return [
    [a[0] + u[0] * alpha, a[1] + u[1] * alpha],
    [d[0] - v[0] * beta, d[1] - v[1] * beta],
  ];
}

type Curve = readonly [Point, Point, Point, Point];

const along = ([a, b, c, d]: Curve, t: number, axis: 0 | 1): number => {
  const s = 1 - t;
  return s * s * s * a[axis] + 3 * s * s * t * b[axis] + 3 * s * t * t * c[axis] + t * t * t * d[axis];
};

function farthest(
  run: readonly Point[],
  places: readonly number[],
  curve: Curve,
): { at: number; far: number } {
  let worst = { at: 0, far: 0 };
  run.forEach((p, i) => {
    const [dx, dy] = [along(curve, places[i]!, 0) - p[0], along(curve, places[i]!, 1) - p[1]];
    if (dx * dx + dy * dy > worst.far) worst = { at: i, far: dx * dx + dy * dy };
  });
  return worst;
}

/** One step of Newton's method towards the place on a curve that is nearest to a point. */
function nearer(curve: Curve, p: Point, t: number): number {
  const s = 1 - t;
  const [a, b, c, d] = curve;
  let [value, slope] = [0, 0];
  for (const axis of [0, 1] as const) {
    const off = along(curve, t, axis) - p[axis];
    const [p1, p2, p3] = [b[axis] - a[axis], c[axis] - b[axis], d[axis] - c[axis]];
    const first = 3 * (s * s * p1 + 2 * s * t * p2 + t * t * p3);
    value += off * first;
    slope += first * first + off * 6 * (s * (p2 - p1) + t * (p3 - p2));
  }
  return slope > 0 ? Math.max(0, Math.min(1, t - value / slope)) : t;
}

/** Where points lie along a run by its length, 0 to 1. */
function lengths(run: readonly Point[]): number[] {
  const sums = [0];
  for (let i = 1; i < run.length; i++) {
    const [dx, dy] = [run[i]![0] - run[i - 1]![0], run[i]![1] - run[i - 1]![1]];
    sums.push(sums[i - 1]! + Math.sqrt(dx * dx + dy * dy));
  }
  const whole = sums[sums.length - 1]!;
  return sums.map((sum) => sum / whole);
}

const dot = (p: Point, q: Point): number => p[0] * q[0] + p[1] * q[1];

const size = (p: Point): number => Math.sqrt(dot(p, p));

const unit = ([x, y]: Point): Point => {
  const long = size([x, y]);
  return long === 0 ? [0, 0] : [x / long, y / long];
};

const way = (from: Point, to: Point): Point => unit([to[0] - from[0], to[1] - from[1]]);
