import { UM_PER_INCH } from "./length.ts";

/** Pixels that `um` micrometres take at `dpi`, whole or not. */
export const pixelsAt = (um: number, dpi: number): number => (um * dpi) / UM_PER_INCH;

/** Whether a length is exactly a whole number of pixels at `dpi` (integer arithmetic, no tolerance). */
export const isWholePixels = (um: number, dpi: number): boolean =>
  Number.isInteger(dpi) ? (um * dpi) % UM_PER_INCH === 0 : Number.isInteger(pixelsAt(um, dpi));

/** Smallest step, in µm, that is both whole pixels at `dpi` and whole micrometres (`dpi` a whole number). */
export function wholePixelStep(dpi: number): number {
  return UM_PER_INCH / gcd(UM_PER_INCH, dpi);
}

/** The nearest dpi below and above at which all of `lengths` (µm) are whole pixels, the lower first. */
export function nearestWholeDpis(lengths: readonly number[], dpi: number): readonly number[] {
  const step = UM_PER_INCH / lengths.reduce(gcd, UM_PER_INCH);
  const below = Math.floor(dpi / step) * step;
  return below > 0 ? [below, below + step] : [below + step];
}

/** Pixels per metre for a PNG pHYs chunk: the nearest whole number (300 dpi is 11 811). */
export const pixelsPerMetre = (pixels: number, um: number): number => Math.round((pixels * 1e6) / um);

/** Greatest common divisor of two whole numbers. */
export function gcd(a: number, b: number): number {
  let [x, y] = [Math.abs(a), Math.abs(b)];
  while (y > 0) [x, y] = [y, x % y];
  return x;
}

/** The nearest lengths below and above (µm) that are whole µm and whole pixels at `dpi`, nearest first. */
export function nearestWholeLengths(um: number, dpi: number): readonly number[] {
  const step = wholePixelStep(dpi);
  const below = Math.floor(um / step) * step;
  const pair = below > 0 ? [below, below + step] : [below + step];
  return pair.sort((p, q) => Math.abs(p - um) - Math.abs(q - um) || p - q);
}
