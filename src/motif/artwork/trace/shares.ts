import { nearest } from "./cluster.ts";
import { BINS, binOf, type Mix, placeOf } from "./histogram.ts";
import type { Ink } from "./inks.ts";
import { SHARED } from "./purity.ts";
import type { Raster } from "./raster.ts";

/** What every pixel is made of: two inks at most. */
export interface Shares {
  readonly width: number;
  readonly height: number;
  /** The ink that has most of the pixel. */
  readonly major: Uint8Array;
  /** The other one. */
  readonly minor: Uint8Array;
  /** What the other one has of it, in 255ths; up to half. */
  readonly part: Uint8Array;
}

/** How far around a shared pixel its two inks are looked for, and how far where that is too near. */
const NEAR = 2;
const FAR = 5;

/**
 * Divides every pixel among the inks. A pixel of one ink has that nearest to it in colour. A shared one is divided
 * between those two, of the inks of the pixels around it, on whose line its colour lies: so the soft edge of a blue
 * shape on white is blue and white, and never a pale blue that the drawing also has.
 */
export function sharesOf(raster: Raster, purity: Uint8Array, inks: readonly Ink[]): Shares {
  const { width, height, data, words } = raster;
  const major = new Uint8Array(width * height);
  const minor = new Uint8Array(width * height);
  const part = new Uint8Array(width * height);
  const inkAt = nearestInk(data, inks);
  for (let i = 0, before = -1, ink = 0; i < major.length; i++) {
    if (purity[i] === SHARED) continue;
    if (before < 0 || words[i] !== words[before]) ink = inkAt(i);
    before = i;
    major[i] = ink;
    minor[i] = ink;
  }
  const around = (x: number, y: number, reach: number): number => {
    let mask = 0;
    const [lastX, lastY] = [Math.min(width - 1, x + reach), Math.min(height - 1, y + reach)];
    for (let row = Math.max(0, y - reach); row <= lastY; row++)
      for (let i = row * width + Math.max(0, x - reach), end = row * width + lastX; i <= end; i++)
        if (purity[i] !== SHARED) mask |= 1 << major[i]!;
    return mask;
  };
  const mixes = inks.map(({ mix }) => mix);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      if (purity[i] !== SHARED) continue;
      let mask = around(x, y, NEAR);
      if ((mask & (mask - 1)) === 0) mask |= around(x, y, FAR);
      if (mask === 0) mask = 1 << inkAt(i);
      const [one, two, share] = divide(data, i, mixes, mask);
      const less = Math.min(share, 255 - share);
      part[i] = less;
      major[i] = less === share ? one : two;
      minor[i] = less === share ? two : one;
    }
  return { width, height, major, minor, part };
}

/** The ink nearest to a pixel in OKLab, found once for each bin of colours. */
function nearestInk(data: Uint8Array, inks: readonly Ink[]): (i: number) => number {
  const places = inks.map(({ place }) => place);
  const known = new Uint8Array(BINS).fill(255);
  return (i) => {
    const key = binOf(data, i);
    if (known[key] !== 255) return known[key]!;
    const at = 4 * i;
    const found = nearest(placeOf([data[at]!, data[at + 1]!, data[at + 2]!, data[at + 3]!]), places);
    known[key] = found;
    return found;
  };
}

/** The two inks of a mask between which a pixel lies best, and the share of the second in 255ths. */
function divide(
  data: Uint8Array,
  i: number,
  mixes: readonly Mix[],
  mask: number,
): readonly [one: number, two: number, share: number] {
  const [red, green, blue, alpha] = [data[4 * i]!, data[4 * i + 1]!, data[4 * i + 2]!, data[4 * i + 3]!];
  const alone = 31 - Math.clz32(mask);
  let best: readonly [number, number, number] = [alone, alone, 0];
  let least = Infinity;
  for (let one = 0; one < mixes.length; one++) {
    if (!(mask & (1 << one))) continue;
    const a = mixes[one]!;
    const [r, g, b, o] = [red - a[0], green - a[1], blue - a[2], alpha - a[3]];
    const own = r * r + g * g + b * b + o * o;
    for (let two = one + 1; two < mixes.length; two++) {
      if (!(mask & (1 << two))) continue;
      const c = mixes[two]!;
      const [wr, wg, wb, wo] = [c[0] - a[0], c[1] - a[1], c[2] - a[2], c[3] - a[3]];
      const across = wr * wr + wg * wg + wb * wb + wo * wo;
      const along = r * wr + g * wg + b * wb + o * wo;
      const t = across > 0 ? Math.max(0, Math.min(1, along / across)) : 0;
      const off = own - 2 * t * along + t * t * across;
      if (off >= least) continue;
      least = off;
      best = [one, two, Math.round(255 * t)];
    }
  }
  return best;
}
