import { badInput } from "../../../errors/catalogue.ts";
import { labelEnclosed } from "./enclosed-paper.ts";
import { smoothed, unevenness } from "./grain.ts";
import { type Palette, paletteOf, type Wish } from "./inks.ts";
import { purityOf, SHARED } from "./purity.ts";
import type { Raster } from "./raster.ts";
import { type Regions, regionsOf } from "./regions.ts";
import { type Shares, sharesOf } from "./shares.ts";
import { type Specks, takeSpecks } from "./specks.ts";

/** Areas of fewer pixels do not say how large the drawing is. */
const DUST = 16;

/** A picture divided among its inks. */
export interface Analysis extends Specks {
  readonly palette: Palette;
  /** Labels are those of the palette's inks. */
  readonly shares: Shares;
  /** Areas of ink before any was taken for a speck. */
  readonly areas: number;
  /** Whether the picture has the grain of paper. */
  readonly rough: boolean;
  /** How much wider than a pixel its edges are. */
  readonly softness: number;
  /** Whether a label is paper, or nothing. */
  readonly isPaper: (label: number) => boolean;
}

/**
 * Finds the inks of a raster and divides it among them; areas smaller than `leastOf` the drawing's longer side, in
 * pixels, go to what is around them.
 * @throws SprigwrightError `empty-artwork`, `picture-too-rich`
 */
export function analyse(
  given: Raster,
  wish: Wish,
  leastOf: (longer: number) => number,
  where: string,
): Analysis {
  const { raster, grain, rough } = smoothed(given);
  const purity = purityOf(raster, grain);
  const palette = paletteOf(raster, purity, unevenness(given), wish);
  const { inks, paper } = palette;
  const isPaper = (label: number): boolean => label === paper || inks[label]?.clear === true;
  if (inks.every((_, i) => isPaper(i)))
    throw onlyPaper(
      inks.every(({ clear }) => clear),
      where,
    );
  const shares = sharesOf(raster, purity, inks);
  const regionsNow = (): Regions => regionsOf(shares.major, shares.width, (label) => !isPaper(label));
  const regions = regionsNow();
  const areas = regions.labels.filter((label) => !isPaper(label)).length;
  const least = leastOf(longerSide(shares, regions, isPaper));
  const specks = takeSpecks(shares, regions, least, inks.length, isPaper, where);
  const found = { areas, rough, softness: softnessOf(purity, shares), isPaper, ...specks };
  const keeps = wish.paper === "around" && paper >= 0 && !inks[paper]!.clear;
  if (!keeps || !labelEnclosed(shares, regionsNow(), paper, inks.length))
    return { palette, shares, ...found };
  return { palette: { inks: [...inks, inks[paper]!], paper }, shares, ...found };
}

/** Longer side of all ink, in pixels, but for what may be dust. */
function longerSide({ width, major }: Shares, regions: Regions, isPaper: (label: number) => boolean): number {
  let [left, right, top, bottom] = [Infinity, -1, Infinity, -1];
  for (let i = 0; i < major.length; i++) {
    if (isPaper(major[i]!) || regions.areas[regions.of[i]!]! < DUST) continue;
    const x = i % width;
    const y = (i - x) / width;
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = y;
  }
  return right < 0 ? width : Math.max(right - left, bottom - top) + 1;
}

/** Shared pixels that a sharp edge has for each pixel's side of its length, seen in rows and columns. */
const SHARP = 1;

/** The mean width of edges against that of a picture drawn by a program, 1 to 3. */
function softnessOf(purity: Uint8Array, { width, major }: Shares): number {
  let [shared, sides] = [0, 0];
  for (let i = 0; i < major.length; i++) {
    if (purity[i] === SHARED) shared++;
    if (i % width > 0 && major[i] !== major[i - 1]) sides++;
    if (i >= width && major[i] !== major[i - width]) sides++;
  }
  return sides === 0 ? 1 : Math.max(1, Math.min(3, shared / sides / SHARP));
}

const onlyPaper = (clear: boolean, where: string): Error =>
  badInput(
    "empty-artwork",
    where,
    clear ? "the picture is all transparent" : "the picture has one colour only",
    'give a picture with shapes on it; paper: "keep" takes the paper for an ink',
  );
