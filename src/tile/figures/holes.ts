import type { Raster } from "./raster.ts";
import type { Scene } from "./scene.ts";
import { roomAt } from "./space.ts";

/** A circle without ink (µm). */
export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** See {@link holesOf}. */
export interface Holes {
  readonly largest: Circle;
  /** The radius (µm) that one in twenty of the holes exceeds; 0 when there are none. */
  readonly large: number;
}

/** Share of the holes that are called large. */
const LARGE = 0.05;
/** Share of the holes that are measured on the outlines themselves. */
const MEASURED = 1 / 8;
/** Most steps of a climb, each to the best of eight places. */
const CLIMBS = 24;
/** Most squares looked into at one size of square. */
const SQUARES = 1024;
/** Squares smaller than this are not cut up further (µm). */
const SMALLEST = 2;

/**
 * The largest empty circle, and how large the large holes are (µm). A hole is a place from which ink is farther than from
 * all places around, where a circle without ink stops growing; those below `least` are nicks in an outline. Holes are found
 * by the exact distance transform of the raster, then measured on the real outlines (flattened within 25 µm at most): no
 * circle that fits is missed by more than 2 µm, unless more than 1024 places rival each other. The nearer the large holes
 * and the largest are, the more even the ground.
 */
export function holesOf(scene: Scene, raster: Raster, squared: Float64Array, least: number): Holes {
  const peaks = peaksOf(raster, squared, least);
  const measured = Math.max(12, Math.ceil(peaks.length * MEASURED));
  const radii: number[] = [];
  let largest: Circle = { x: 0, y: 0, radius: 0 };
  for (const peak of peaks.slice(0, measured)) {
    const grown = climb(scene, raster, peak);
    radii.push(grown.radius);
    if (grown.radius > largest.radius) largest = grown;
  }
  radii.sort((p, q) => q - p);
  return {
    largest: largestOf(scene, raster, squared, largest),
    large: radii[Math.floor(peaks.length * LARGE)] ?? 0,
  };
}

interface Peak {
  readonly index: number;
  readonly value: number;
}

/** Pixels farther from ink than their eight neighbours and than `least` µm, the farthest first. */
function peaksOf({ columns, rows, width, height }: Raster, squared: Float64Array, least: number): Peak[] {
  const floor = Math.max(least, width, height);
  const last = columns - 1;
  const peaks: Peak[] = [];
  for (let row = 0; row < rows; row++) {
    const here = row * columns;
    const above = ((row - 1) & (rows - 1)) * columns;
    const below = ((row + 1) & (rows - 1)) * columns;
    for (let x = 0; x < columns; x++) {
      const value = squared[here + x]!;
      if (value < floor * floor || value === Infinity) continue;
      const left = (x - 1) & last;
      const right = (x + 1) & last;
      // Of a level stretch the last pixel counts: those that come later must be lower, the others no higher.
      if (squared[here + right]! >= value || squared[here + left]! > value) continue;
      if (squared[below + x]! >= value || squared[above + x]! > value) continue;
      if (squared[below + left]! >= value || squared[below + right]! >= value) continue;
      if (squared[above + left]! > value || squared[above + right]! > value) continue;
      peaks.push({ index: here + x, value: Math.sqrt(value) });
    }
  }
  return peaks.sort((p, q) => q.value - p.value || p.index - q.index);
}

/** From a pixel to where the room is greatest around it, by ever smaller steps, on the outlines themselves. */
function climb(scene: Scene, { columns, width, height }: Raster, { index, value }: Peak): Circle {
  const column = index & (columns - 1);
  let x = (column + 0.5) * width;
  let y = ((index - column) / columns + 0.5) * height;
  const reach = value + 2 * (width + height);
  let radius = roomAt(scene, x, y, reach);
  for (let step = 0.5, left = CLIMBS; step > 0.05 && left > 0; left--) {
    const here = { x, y, radius };
    for (const [u, v] of AROUND) {
      const room = roomAt(scene, here.x + u * step * width, here.y + v * step * height, reach);
      if (room > radius) [x, y, radius] = [here.x + u * step * width, here.y + v * step * height, room];
    }
    if (radius === here.radius) step /= 2;
  }
  return { x, y, radius };
}

const AROUND = [
  [1, 0],
  [0.7, 0.7],
  [0, 1],
  [-0.7, 0.7],
  [-1, 0],
  [-0.7, -0.7],
  [0, -1],
  [0.7, -0.7],
] as const;

/**
 * The largest circle, from one that is nearly so. Room changes by no more than the distance moved (it is 1-Lipschitz), so a
 * square whose middle has too little room to beat the best anywhere within it is left out; the others are quartered
 * (Garcia-Castellanos and Lombardo 2007 search the pole of inaccessibility alike; from memory).
 */
function largestOf(scene: Scene, raster: Raster, squared: Float64Array, start: Circle): Circle {
  const { columns, width, height } = raster;
  const diagonal = Math.sqrt(width * width + height * height);
  let best = start;
  let squares: Circle[] = [];
  // A pixel's own room is known within half a diagonal, and what lies in it is within another half.
  const least = Math.max(0, best.radius - diagonal);
  for (let index = 0; index < squared.length; index++) {
    if (squared[index]! <= least * least || squared[index] === Infinity) continue;
    const column = index & (columns - 1);
    const [x, y] = [(column + 0.5) * width, ((index - column) / columns + 0.5) * height];
    squares.push({ x, y, radius: Math.sqrt(squared[index]!) + diagonal / 2 });
  }
  for (let half = diagonal / 2, part = 0.25; squares.length > 0; half /= 2, part /= 2) {
    squares.sort((p, q) => q.radius - p.radius || p.y - q.y || p.x - q.x);
    const next: Circle[] = [];
    for (const { x, y, radius: most } of squares.slice(0, SQUARES)) {
      if (most + half <= best.radius + SMALLEST / 2) break;
      const radius = roomAt(scene, x, y, most);
      if (radius > best.radius) best = { x, y, radius };
      if (half <= SMALLEST || radius + half <= best.radius + SMALLEST / 2) continue;
      for (const [u, v] of [
        [-1, -1],
        [1, -1],
        [-1, 1],
        [1, 1],
      ] as const)
        next.push({ x: x + u * part * width, y: y + v * part * height, radius: radius + half / 2 });
    }
    squares = next;
  }
  return best;
}
