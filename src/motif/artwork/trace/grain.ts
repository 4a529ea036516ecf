import { channelGap, type Raster, raster as rasterFrom } from "./raster.ts";

/** Grain from which on a picture is smoothed before it is read. */
const ROUGH = 3;
/** Pixels that are looked at: rows are passed over in larger pictures. */
const ENOUGH = 1_000_000;

/** How far apart pixels are looked at for the drift of a paint's tone. */
const DRIFT = 16;

/**
 * How far neighbouring pixels of one paint differ: the median of the largest channel's difference from one pixel to
 * the next, in levels of 255. 0 for a drawing made on a screen, 3 and more for scanned paper. Most pixels of flat
 * paint have neighbours of the same paint, so that edges do not count.
 */
export const grainOf = (raster: Raster): number => medianGap(raster, 1);

/** How unlike pixels of one paint are, near each other or some way off, in levels of 255. */
export const unevenness = (raster: Raster): number => Math.max(grainOf(raster), medianGap(raster, DRIFT));

function medianGap({ width, height, data, words }: Raster, apart: number): number {
  const counts = new Uint32Array(256);
  let all = 0;
  const step = Math.ceil((width * height) / ENOUGH);
  for (let y = 0; y < height; y += step)
    for (let x = 0, i = y * width; x + apart < width; x++, i++, all++) {
      const gap = words[i] === words[i + apart] ? 0 : channelGap(data, i, i + apart);
      counts[gap] = counts[gap]! + 1;
    }
  let [gap, sum] = [0, counts[0]!];
  while (sum * 2 < all && gap < 255) sum += counts[++gap]!;
  return gap;
}

/** A raster with its grain smoothed. */
export interface Smoothed {
  readonly raster: Raster;
  /** What is left of the grain. */
  readonly grain: number;
  /** Whether there was enough of it to smooth. */
  readonly rough: boolean;
}

/** The raster with its grain smoothed; edges stay where they are. */
export function smoothed(raster: Raster): Smoothed {
  const grain = grainOf(raster);
  if (grain < ROUGH) return { raster, grain, rough: false };
  let smooth = raster;
  for (let pass = 0; pass < 2; pass++) smooth = withoutGrain(smooth, 3 * grain);
  return { raster: smooth, grain: grainOf(smooth), rough: true };
}

/** Each pixel as the mean of those around it that differ by no more than `most` (the sigma filter of J.-S. Lee, 1983). */
function withoutGrain({ width, height, data }: Raster, most: number): Raster {
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    const firstRow = Math.max(0, y - 1) * width;
    const lastRow = Math.min(height - 1, y + 1) * width;
    for (let x = 0; x < width; x++) {
      const at = 4 * (y * width + x);
      const red = data[at]!;
      const green = data[at + 1]!;
      const blue = data[at + 2]!;
      const alpha = data[at + 3]!;
      let [reds, greens, blues, alphas, count] = [0, 0, 0, 0, 0];
      const left = x > 0 ? x - 1 : 0;
      const right = x + 1 < width ? x + 1 : x;
      for (let row = firstRow; row <= lastRow; row += width)
        for (let from = 4 * (row + left), end = 4 * (row + right); from <= end; from += 4) {
          const [r, g] = [data[from]!, data[from + 1]!];
          const [b, a] = [data[from + 2]!, data[from + 3]!];
          if (r > red + most || r < red - most || g > green + most || g < green - most) continue;
          if (b > blue + most || b < blue - most || a > alpha + most || a < alpha - most) continue;
          reds += r;
          greens += g;
          blues += b;
          alphas += a;
          count++;
        }
      const half = count >> 1;
      out[at] = Math.floor((reds + half) / count);
      out[at + 1] = Math.floor((greens + half) / count);
      out[at + 2] = Math.floor((blues + half) / count);
      out[at + 3] = Math.floor((alphas + half) / count);
    }
  }
  return rasterFrom(width, height, out);
}
