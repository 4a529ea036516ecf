import type { Vector } from "../../geometry/lattice.ts";
import type { Lane } from "../tile.ts";
import { bandsAlong } from "./bands.ts";
import { directionsOf } from "./directions.ts";
import type { Raster } from "./raster.ts";
import type { Scene } from "./scene.ts";

/** See {@link lanesOf}. */
export interface Lanes {
  readonly tracking: Lane;
  readonly gutter: Lane;
}

/** Width of the bands looked at, in spacings. */
const WIDTH = 0.5;
/** Directions whose lines lie closer side by side than so many spacings are left out: every line averages over all. */
const APART = 2;

/**
 * Straight lanes, which show from across the room where a repeat is hung or worn. In every direction in which a line closes
 * (lattice vectors i·a + j·b, i and j up to 3), the ink in all straight bands half a spacing wide is compared.
 *
 * - Tracking: standard deviation of the bands' ink over its mean, against motifs strewn by blind chance
 *   (√(bands' distance / width / n') for n' motifs); the worst direction. From 0; about 1 is chance, below 0.6 is even. High
 *   where motifs line up: in a set layout by intention.
 * - Gutter: ink in the emptiest band over the mean, 0 (a clear lane) to 1; the worst direction. Above 0.3 no lane shows.
 *
 * Bands are read from the raster. Source: common practice among repeat designers (tracking, gutters); figures are our own.
 */
export function lanesOf(scene: Scene, raster: Raster): Lanes {
  const { lattice, spacing, cellArea } = scene;
  let tracking: Lane = { value: 0, along: [0, 0] };
  let gutter: Lane = { value: 1, along: [0, 0] };
  for (const vector of directionsOf(lattice)) {
    const length = Math.sqrt(vector[0] * vector[0] + vector[1] * vector[1]);
    const period = cellArea / length;
    if (period < APART * spacing) continue;
    const { mean, least, deviation } = spread(bandsAlong(raster, lattice, vector, WIDTH * spacing));
    if (!(mean > 0)) continue;
    const chance = Math.sqrt((period * spacing) / (WIDTH * cellArea));
    const along: Vector = [vector[0] / 1000, vector[1] / 1000];
    if (deviation / mean / chance > tracking.value) tracking = { value: deviation / mean / chance, along };
    if (least / mean < gutter.value) gutter = { value: least / mean, along };
  }
  return { tracking, gutter };
}

function spread(values: Float64Array): { mean: number; least: number; deviation: number } {
  let [sum, squares, least] = [0, 0, Infinity];
  for (const value of values) {
    sum += value;
    squares += value * value;
    if (value < least) least = value;
  }
  const mean = sum / values.length;
  return { mean, least, deviation: Math.sqrt(Math.max(0, squares / values.length - mean * mean)) };
}
