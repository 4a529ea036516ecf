import { badInput, notWholePixels, outOfRange, unknownName, wrongType } from "../../errors/catalogue.ts";
import type { Size } from "../../geometry/lattice.ts";
import type { Watch } from "../../tile/steps.ts";
import { UM_PER_INCH } from "../../units/length.ts";
import { isWholePixels, pixelsAt } from "../../units/pixels.ts";
import type { Grid } from "./grid.ts";
import { wholePixelSizes } from "./whole-pixels.ts";

/** What every call of `rasterize` may say. */
interface Common extends Watch {
  /** How many blocks the picture shows; default one. */
  readonly repeats?: { readonly across: number; readonly down: number } | undefined;
}

/**
 * How large a picture to make: one of
 * - `dpi`: pixels per inch, a whole number from 1 to 2400. The block has to be whole pixels both ways, so that the
 *   picture repeats without a seam at its true size. For print.
 * - `width`: pixels across the whole picture; each block is rounded to whole pixels both ways, which stretches it by
 *   under half a pixel. For screens.
 */
export type RasterizeOptions = Common &
  (
    | { readonly dpi: number; readonly width?: undefined }
    | { readonly width: number; readonly dpi?: undefined }
  );

/** Most pixels along one side. */
const MOST_PIXELS_A_SIDE = 32_768;

/** Most pixels in all: at four bytes each, as most readers unpack them, 2 GiB. */
const MOST_PIXELS = 536_870_912;

/** What the options come to. */
export interface Plan {
  /** One block. */
  readonly grid: Grid;
  readonly across: number;
  readonly down: number;
}

/**
 * Checks the options and works out the pixels.
 * @throws SprigwrightError `wrong-type`, `number-range`, `unknown-option`, `raster-size`, `not-whole-pixels`
 */
export function planRaster(block: Size, options: RasterizeOptions, where: string): Plan {
  if (typeof options !== "object" || options === null)
    throw wrongType(where, options, "options with a dpi or a width");
  refuseUnknown(options, ["dpi", "width", "repeats", "signal", "onProgress"], where);
  const repeats = options.repeats ?? { across: 1, down: 1 };
  if (typeof repeats !== "object")
    throw wrongType(`${where} > repeats`, repeats, "how many blocks the picture shows, { across, down }");
  refuseUnknown(repeats, ["across", "down"], `${where} > repeats`);
  const across = count(repeats.across, `${where} > repeats > across`, MOST_PIXELS_A_SIDE);
  const down = count(repeats.down, `${where} > repeats > down`, MOST_PIXELS_A_SIDE);
  const { dpi, width } = options;
  if ((dpi === undefined) === (width === undefined))
    throw badInput(
      "raster-size",
      where,
      dpi === undefined ? "neither a dpi nor a width was given" : "both a dpi and a width were given",
      "give a dpi for a picture at its true size, or a width in pixels",
    );
  const pixels = dpi !== undefined ? atDpi(block, dpi, where) : atWidth(block, width!, across, where);
  const [w, h] = [pixels.width * across, pixels.height * down];
  if (w > MOST_PIXELS_A_SIDE || h > MOST_PIXELS_A_SIDE || w * h > MOST_PIXELS)
    throw badInput(
      "raster-size",
      where,
      `the picture would be ${w} x ${h} pixels`,
      `keep it to ${MOST_PIXELS_A_SIDE} a side and ${MOST_PIXELS} in all: fewer repeats, or a lower dpi or width`,
    );
  return { grid: { ...pixels, block }, across, down };
}

function atDpi(block: Size, dpi: number, where: string): Size {
  count(dpi, `${where} > dpi`, 2400, "dpi");
  if (!isWholePixels(block.width, dpi) || !isWholePixels(block.height, dpi))
    throw notWholePixels(`${where} > dpi`, block, dpi, wholePixelSizes(block, dpi));
  return { width: pixelsAt(block.width, dpi), height: pixelsAt(block.height, dpi) };
}

function atWidth(block: Size, total: number, across: number, where: string): Size {
  count(total, `${where} > width`, MOST_PIXELS_A_SIDE, "pixels");
  const width = Math.max(1, Math.round(total / across));
  return { width, height: Math.max(1, Math.round((width * block.height) / block.width)) };
}

function refuseUnknown(given: object, known: readonly string[], where: string): void {
  for (const name of Object.keys(given))
    if (!known.includes(name)) throw unknownName(where, "option", name, known);
}

function count(value: number, where: string, max: number, unit = ""): number {
  if (!Number.isInteger(value)) throw wrongType(where, value, "a whole number");
  if (value < 1 || value > max) throw outOfRange(where, value, { min: 1, max }, unit);
  return value;
}

/** Pixels per inch along the block's width. */
export const effectiveDpi = (grid: Grid): number => (grid.width * UM_PER_INCH) / grid.block.width;
