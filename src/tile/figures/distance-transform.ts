import type { Raster } from "./raster.ts";

/**
 * Squared distance (µm²) of every pixel's middle from the middle of the nearest pixel with ink, on the torus; all
 * infinite when there is no ink. It is exact; the ink itself is within half a pixel's diagonal of its pixel's middle.
 *
 * Method: Felzenszwalb and Huttenlocher, "Distance Transforms of Sampled Functions", Theory of Computing 8 (2012):
 * distances along columns, then along each row the lower envelope of a parabola over every pixel. Rows are closed by
 * beginning at a least value: the parabola there is below all others there, so none reaches past it.
 */
export function distanceTransform({ columns, rows, width, height, ink }: Raster): Float64Array {
  const squared = new Float64Array(columns * rows);
  alongColumns(squared, ink, columns, rows, height);
  const values = new Float64Array(columns + 1);
  const vertices = new Int32Array(columns + 1);
  const bounds = new Float64Array(columns + 2);
  const unit = width * width;
  for (let row = 0; row < rows; row++) {
    const base = row * columns;
    let start = 0;
    for (let x = 1; x < columns; x++) if (squared[base + x]! < squared[base + start]!) start = x;
    if (squared[base + start] === Infinity) continue;
    for (let x = 0; x <= columns; x++) values[x] = squared[base + ((start + x) & (columns - 1))]! / unit;
    const count = envelope(values, vertices, bounds);
    let k = 0;
    for (let x = 0; x < columns; x++) {
      while (k + 1 < count && bounds[k + 1]! < x) k++;
      const away = x - vertices[k]!;
      squared[base + ((start + x) & (columns - 1))] = (away * away + values[vertices[k]!]!) * unit;
    }
  }
  return squared;
}

/** Squared distance to the nearest ink in the same column: down and up again, twice round since columns close. */
function alongColumns(
  squared: Float64Array,
  ink: Uint8Array,
  columns: number,
  rows: number,
  height: number,
): void {
  const steps = new Float64Array(columns * rows).fill(Infinity);
  for (const way of [1, -1]) {
    const since = new Float64Array(columns).fill(Infinity);
    for (let i = 0; i < 2 * rows; i++) {
      const base = ((way * i) & (rows - 1)) * columns;
      for (let x = 0; x < columns; x++) {
        const away = ink[base + x] === 0 ? since[x]! + 1 : 0;
        since[x] = away;
        if (away < steps[base + x]!) steps[base + x] = away;
      }
    }
  }
  for (let i = 0; i < steps.length; i++) {
    const away = steps[i]! * height;
    squared[i] = away * away;
  }
}

/** The parabolas (x - v)² + values[v] that are lowest somewhere: their places, and where each begins to be. */
function envelope(values: Float64Array, vertices: Int32Array, bounds: Float64Array): number {
  let count = 0;
  for (let x = 0; x < values.length; x++) {
    const value = values[x]!;
    if (value === Infinity) continue;
    let from = -Infinity;
    while (count > 0) {
      const v = vertices[count - 1]!;
      from = (value + x * x - values[v]! - v * v) / (2 * (x - v));
      if (from > bounds[count - 1]!) break;
      count--;
    }
    vertices[count] = x;
    bounds[count] = count === 0 ? -Infinity : from;
    count++;
  }
  return count;
}
