import type { Track } from "./track.ts";

/** How far the letters' own measure runs on a track: it differs from the track's where the track bends to their tops. */
export interface Gauge {
  /** The track's whole length in the letters' measure (mm). */
  readonly length: number;
  /** Length in the letters' measure → length along the track. */
  readonly at: (u: number) => number;
}

/** Letters of some size (mm) → their gauge on a track. */
export type Gauging = (size: number) => Gauge;

/** Height above the baseline, in ems, at which letters are as far apart as on a straight line: half a capital, nearly. */
const HEIGHT = 0.3;

/** However sharp the bend, letters are not moved farther apart than by this. */
const LEAST = 0.3;

/** Steps in which the bends of a track are measured. */
const STEPS = 2000;

/** Lengths as they are along the baseline. */
export const plainGauge =
  (track: Track): Gauging =>
  () => ({ length: track.length, at: (u) => u });

/** On the inside of a circle, tops would crowd: there letters are spaced along a smaller circle, at `HEIGHT`. */
export const insideGauge =
  (track: Track, radius: number): Gauging =>
  (size) => {
    const factor = Math.max(LEAST, 1 - (HEIGHT * size) / radius);
    return { length: track.length * factor, at: (u) => u / factor };
  };

/**
 * The same for any track: wherever it bends to the letters' tops, a step ds of it counts as ds - h·dθ, which is the
 * length of the parallel curve at the height h. Where it bends away, feet would crowd, and the baseline counts.
 */
export function bendGauge(track: Track): Gauging {
  const step = track.length / STEPS;
  const turns = turnsOf(track, step);
  const sums = [0];
  for (const turn of turns) sums.push(sums.at(-1)! + turn);
  const total = sums[STEPS]!;
  /** Sum of the turns of the steps before `i`, on both sides of the track's ends. */
  const before = (i: number): number => {
    if (!track.closed) return sums[Math.max(0, Math.min(STEPS, i))]!;
    const rounds = Math.floor(i / STEPS);
    return rounds * total + sums[i - rounds * STEPS]!;
  };
  return (size) => {
    // A bend is felt by the letters half an em around it.
    const reach = Math.max(1, Math.min(STEPS / 4, Math.round((0.25 * size) / step)));
    const lengths = [0];
    for (let i = 0; i < STEPS; i++) {
      const bend = (before(i + reach + 1) - before(i - reach)) / (2 * reach + 1);
      lengths.push(lengths[i]! + Math.max(LEAST * step, step - HEIGHT * size * Math.max(0, bend)));
    }
    const length = lengths[STEPS]!;
    return { length, at: (u) => lookUp(lengths, track.closed, u) * step };
  };
}

/** How far the track turns to its letters' tops in every step, in radians (nearly, in sharp corners). */
function turnsOf(track: Track, step: number): number[] {
  const way = (i: number): readonly [number, number] => track.along((i + 0.5) * step, step / 2);
  return Array.from({ length: STEPS }, (_, i) => {
    if (i === 0 && !track.closed) return 0;
    const [[ax, ay], [bx, by]] = [way(i - 1), way(i)];
    const sine = ay * bx - ax * by;
    if (ax * bx + ay * by >= 0) return sine;
    return sine < 0 ? -2 - sine : 2 - sine;
  });
}

/** Where `u` lies among growing lengths, in steps. */
function lookUp(lengths: readonly number[], closed: boolean, u: number): number {
  const whole = lengths[STEPS]!;
  const rounds = closed ? Math.floor(u / whole) : 0;
  const rest = Math.max(0, Math.min(whole, u - rounds * whole));
  let [low, high] = [0, STEPS - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (lengths[middle]! <= rest) low = middle;
    else high = middle - 1;
  }
  const [from, to] = [lengths[low]!, lengths[low + 1]!];
  return rounds * STEPS + low + (rest - from) / (to - from);
}
