import { type Oklab, oklabOf } from "./oklab.ts";
import { AMIDST, SHARED } from "./purity.ts";
import type { Raster } from "./raster.ts";

/** What opacity counts beside OKLab's lightness: clear and white are as far apart as half of black and white. */
const OPACITY = 0.5;

/** Pixels of nearly one colour. */
export interface Bin {
  /** Six bits of each channel over white paper, and two of alpha. */
  readonly key: number;
  readonly pixels: number;
  /** How many of them lie amidst their ink. */
  readonly amidst: number;
  /** Mean of the pixels as they mix. */
  readonly mix: Mix;
  /** OKLab over white paper, and opacity. */
  readonly place: Place;
}

/** Red, green, blue times alpha, and alpha; 0 to 255. */
export type Mix = readonly [red: number, green: number, blue: number, alpha: number];
/** Lightness, a, b, opacity. */
export type Place = readonly [lightness: number, a: number, b: number, opacity: number];

/** The bin of a pixel. */
export function binOf(data: Uint8Array, i: number): number {
  const at = 4 * i;
  const alpha = data[at + 3]!;
  const clear = 255 - alpha;
  const [red, green, blue] = [data[at]! + clear, data[at + 1]! + clear, data[at + 2]! + clear];
  return ((alpha >> 6) << 18) | ((red >> 2) << 12) | ((green >> 2) << 6) | (blue >> 2);
}

/** Keys of bins. */
export const BINS: number = 1 << 20;

/** Where a mix stands among colours: over white paper. */
export function placeOf([red, green, blue, alpha]: Mix): Place {
  const clear = 255 - alpha;
  const lab: Oklab = oklabOf(red + clear, green + clear, blue + clear);
  return [...lab, (OPACITY * alpha) / 255];
}

/** Squared distance of two places. */
export function apartSquared(p: Place, q: Place): number {
  const [l, a, b, o] = [p[0] - q[0], p[1] - q[1], p[2] - q[2], p[3] - q[3]];
  return l * l + a * a + b * b + o * o;
}

/** The colours of all pixels that are of one ink, most frequent first. */
export function binsOf({ data, words }: Raster, purity: Uint8Array): Bin[] {
  const slots = new Int32Array(BINS).fill(-1);
  const keys: number[] = [];
  let sums = new Float64Array(6 * 1024);
  const slotOf = (i: number): number => {
    const key = binOf(data, i);
    if (slots[key]! >= 0) return slots[key]!;
    slots[key] = keys.length;
    keys.push(key);
    if (6 * keys.length > sums.length) {
      const wider = new Float64Array(2 * sums.length);
      wider.set(sums);
      sums = wider;
    }
    return keys.length - 1;
  };
  // Runs of equal pixels are counted at once.
  for (let i = 0; i < purity.length; ) {
    const start = i;
    let [own, amidst] = [0, 0];
    for (; i < purity.length && words[i] === words[start]; i++) {
      const state = purity[i]!;
      if (state !== SHARED) own++;
      if (state === AMIDST) amidst++;
    }
    if (own === 0) continue;
    const [at, from] = [6 * slotOf(start), 4 * start];
    sums[at] = sums[at]! + own * data[from]!;
    sums[at + 1] = sums[at + 1]! + own * data[from + 1]!;
    sums[at + 2] = sums[at + 2]! + own * data[from + 2]!;
    sums[at + 3] = sums[at + 3]! + own * data[from + 3]!;
    sums[at + 4] = sums[at + 4]! + own;
    sums[at + 5] = sums[at + 5]! + amidst;
  }
  const bins = keys.map((key, slot): Bin => {
    const at = 6 * slot;
    const pixels = sums[at + 4]!;
    const mean = (c: number): number => sums[at + c]! / pixels;
    const mix: Mix = [mean(0), mean(1), mean(2), mean(3)];
    return { key, pixels, amidst: sums[at + 5]!, mix, place: placeOf(mix) };
  });
  return bins.sort((p, q) => q.pixels - p.pixels || p.key - q.key);
}
