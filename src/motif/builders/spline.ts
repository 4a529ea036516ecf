import type { Chain } from "./chain.ts";
import type { Vector } from "./vector.ts";

/** How often slopes are mended; the error at least halves each time. */
const ROUNDS = 40;

/**
 * The smooth curve through points x, y, x, y … in mm, two or more: a cubic spline over chord lengths, whose slope
 * and curvature run on across every point, as a draughtsman's bent lath does. An open one leaves its ends as
 * the parabola through the nearest three points does; a closed one (three points or more) runs on into its start.
 */
export function spline(points: readonly number[], closed = false): number[] {
  const p = withoutRepeats(points);
  const n = p.length / 2;
  if (n < 3)
    return joined(p, [chords(p, false), [p[2]! - p[0]!, p[2]! - p[0]!], [p[3]! - p[1]!, p[3]! - p[1]!]], 1);
  const h = chords(p, closed);
  const slopes = [0, 1].map((axis) => slopesOf(p, h, axis, closed));
  return joined(p, [h, slopes[0]!, slopes[1]!], h.length);
}

const chords = (p: readonly number[], closed: boolean): number[] =>
  Array.from({ length: p.length / 2 - (closed ? 0 : 1) }, (_, i) => {
    const k = (2 * i + 2) % p.length;
    const [dx, dy] = [p[k]! - p[2 * i]!, p[k + 1]! - p[2 * i + 1]!];
    return Math.sqrt(dx * dx + dy * dy);
  });

/** Slopes by length at every point, by the method of Gauss and Seidel: the system is diagonally dominant. */
function slopesOf(p: readonly number[], h: readonly number[], axis: number, closed: boolean): number[] {
  const n = p.length / 2;
  const rise = (i: number): number =>
    (p[2 * ((i + 1) % n) + axis]! - p[2 * ((i + n) % n) + axis]!) / h[(i + h.length) % h.length]!;
  const m = new Array<number>(n).fill(0);
  const end = (near: number, far: number): number =>
    rise(near) + ((rise(near) - rise(far)) * h[near]!) / (h[near]! + h[far]!);
  if (!closed) [m[0], m[n - 1]] = [end(0, 1), end(n - 2, n - 3)];
  for (let round = 0; round < ROUNDS; round++)
    for (let i = closed ? 0 : 1; i < (closed ? n : n - 1); i++) {
      const [a, b] = [h[(i + h.length - 1) % h.length]!, h[i]!];
      const pull = b * m[(i + n - 1) % n]! + a * m[(i + 1) % n]!;
      m[i] = (3 * (b * rise(i - 1) + a * rise(i)) - pull) / (2 * (a + b));
    }
  return m;
}

function joined(p: readonly number[], [h, mx, my]: readonly (readonly number[])[], curves: number): number[] {
  const n = p.length / 2;
  const out = [p[0]!, p[1]!];
  for (let i = 0; i < curves; i++) {
    const k = (i + 1) % n;
    const reach = curves === 1 ? 1 / 3 : h![i]! / 3;
    out.push(p[2 * i]! + mx![i]! * reach, p[2 * i + 1]! + my![i]! * reach);
    out.push(p[2 * k]! - mx![k]! * reach, p[2 * k + 1]! - my![k]! * reach, p[2 * k]!, p[2 * k + 1]!);
  }
  return out;
}

/** A point that repeats the one before it (to a µm) has no direction: it is left out. */
function withoutRepeats(points: readonly number[]): number[] {
  const out: number[] = [];
  for (let i = 0; i < points.length; i += 2) {
    const [dx, dy] = [points[i]! - out[out.length - 2]!, points[i + 1]! - out[out.length - 1]!];
    if (!(dx * dx + dy * dy < 1e-6)) out.push(points[i]!, points[i + 1]!);
  }
  return out.length > 2 ? out : [...out, ...out];
}

/**
 * A closed chain of smooth runs that meet in corners. Each run goes through its points and starts where the one
 * before it ended (the first starts at its own first point); a run of one point is a straight side.
 * What is left open at the end is closed with a straight side.
 */
export function contour(...runs: readonly (readonly number[])[]): Chain {
  const out: number[] = runs[0]!.slice(0, 2) as number[];
  runs.forEach((run, i) => {
    const from = i === 0 ? [] : out.slice(-2);
    out.push(...spline([...from, ...run]).slice(2));
  });
  const [dx, dy] = [out[0]! - out[out.length - 2]!, out[1]! - out[out.length - 1]!];
  if (dx * dx + dy * dy > 1e-6) out.push(...spline([...out.slice(-2), out[0]!, out[1]!]).slice(2));
  return out;
}

/** What ends of a half outline on the axis are: smooth (default) or pointed. */
export interface Ends {
  readonly tip?: boolean;
  readonly foot?: boolean;
}

/**
 * The runs of a whole outline, for {@link contour}, from its right half: runs from the axis x = 0 at the top to the
 * axis at the bottom, each but the first starting where the one before it ended. The halves run smoothly into each
 * other on the axis, unless an end is said to be pointed. A single run of a smooth whole is closed: `round` is true.
 */
export function twin(
  { tip = false, foot = false }: Ends,
  half: readonly (readonly number[])[],
): { readonly runs: readonly (readonly number[])[]; readonly round: boolean } {
  const right = half.map((run, i) => (i === 0 ? [...run] : [...half[i - 1]!.slice(-2), ...run]));
  const left = right.map(reflected).reverse();
  const last = right.length - 1;
  const runs = foot
    ? [...right, ...left]
    : [...right.slice(0, last), [...right[last]!, ...left[0]!.slice(2)], ...left.slice(1)];
  if (!tip && runs.length === 1) return { runs: [runs[0]!.slice(0, -2)], round: true };
  if (!tip) runs[0] = [...runs.pop()!, ...runs[0]!.slice(2)];
  return { runs: runs.map((run, i) => (i === 0 ? run : run.slice(2))), round: false };
}

/** Points in mirror image, run through the other way. */
function reflected(points: readonly number[]): number[] {
  const out: number[] = [];
  for (let i = points.length - 2; i >= 0; i -= 2) out.push(-points[i]!, points[i + 1]!);
  return out;
}

/** Handle of a rounded corner as a share of its legs: a quarter circle's at a right angle. */
const ROUND = 0.5523;

/** A polygon as a closed chain, each corner rounded from `r` before to `r` after it, at most to half of a side. */
export function softened(points: readonly number[], r: number): Chain {
  const n = points.length / 2;
  const at = (i: number): Vector => [points[2 * ((i + n) % n)]!, points[2 * ((i + n) % n) + 1]!];
  const out: number[] = [];
  for (let i = 0; i < n; i++) {
    const p = at(i);
    const leg = (to: Vector): Vector => {
      const [dx, dy] = [to[0] - p[0], to[1] - p[1]];
      const size = Math.sqrt(dx * dx + dy * dy);
      const share = size === 0 ? 0 : Math.min(0.48, r / size);
      return [dx * share, dy * share];
    };
    const [a, b] = [leg(at(i - 1)), leg(at(i + 1))];
    const from: Vector = [p[0] + a[0], p[1] + a[1]];
    out.push(...(i === 0 ? from : [...out.slice(-2), ...from, ...from]));
    out.push(p[0] + a[0] * (1 - ROUND), p[1] + a[1] * (1 - ROUND));
    out.push(p[0] + b[0] * (1 - ROUND), p[1] + b[1] * (1 - ROUND), p[0] + b[0], p[1] + b[1]);
  }
  return [...out, ...out.slice(-2), out[0]!, out[1]!, out[0]!, out[1]!];
}
