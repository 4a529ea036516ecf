import { badInput, notWholePixels, outOfRange, unknownName, wrongType } from "../../errors/catalogue.ts";
import type { Size } from "../../geometry/lattice.ts";
import type { Watch } from "../../tile/steps.ts";
import type { Tile } from "../../tile/tile.ts";
import { UM_PER_INCH } from "../../units/length.ts";
import { isWholePixels, pixelsAt } from "../../units/pixels.ts";
import { type Cut, cutSize } from "../cut.ts";
import type { Grid } from "./grid.ts";
import { nearestWhole } from "./whole-pixels.ts";

/** What every call of `rasterize` may say. */
interface Common extends Watch {
  /** The piece of cloth that the picture shows; default `"block"`. However many blocks, one is painted. */
  readonly cut?: Cut | undefined;
  /**
   * - `"indexed"`: a palette of inks and of steps between them; a third of the size, and a further colorway is another
   *   palette and takes milliseconds.
   * - `"truecolor"`: three bytes a pixel, for readers that want no palette; every colorway is compressed anew.
   *
   * Default: indexed, and truecolour where so many roles meet that 256 entries cannot show every edge smoothly.
   */
  readonly color?: ColorType | undefined;
}

/** How a PNG holds its colours (PNG, third edition, 6.1): an 8-bit palette, or three 8-bit samples a pixel. */
export type ColorType = "indexed" | "truecolor";

/**
 * How large a picture to make: one of
 * - `dpi`: pixels per inch, a whole number from 1 to 2400. The block (with `cut: "unit"`, the unit) has to be whole
 *   pixels both ways, so that the picture repeats without a seam at its true size. For print.
 * - `width`: pixels across the whole picture; each block is rounded to whole pixels both ways, which stretches it by
 *   under half a pixel. For screens.
 */
export type RasterizeOptions = Common &
  (
    | { readonly dpi: number; readonly width?: undefined }
    | { readonly width: number; readonly dpi?: undefined }
  );

/** Most pixels per inch. */
const MOST_DPI = 2400;

/** Most pixels along one side: what a match in the compressed rows can reach, and readers can show. */
const MOST_PIXELS_A_SIDE = 32_768;

/** Most pixels along one side of a cut of several blocks: 11 m at 150 dpi. */
const MOST_PIXELS_A_CUT = 65_535;

/** Most pixels in all: at four bytes each, as most readers unpack them, 2 GiB. */
export const MOST_PIXELS = 536_870_912;

/** What the options come to. */
export interface Plan {
  /** One block. */
  readonly grid: Grid;
  /** Pixels across and down the picture. */
  readonly pixels: Size;
  readonly color: ColorType | undefined;
}

const KEYS = ["dpi", "width", "cut", "color", "signal", "onProgress"];
export const COLORS: readonly ColorType[] = ["indexed", "truecolor"];

/**
 * Checks the options and works out the pixels.
 * @throws SprigwrightError `wrong-type`, `number-range`, `unknown-option`, `unknown-cut`, `unknown-kind-of-color`,
 * `raster-size`, `not-whole-pixels`
 */
export function planRaster(
  tile: Pick<Tile, "block" | "arrangement">,
  options: RasterizeOptions,
  where: string,
): Plan {
  if (typeof options !== "object" || options === null)
    throw wrongType(where, options, "options with a dpi or a width");
  for (const name of Object.keys(options))
    if (!KEYS.includes(name)) throw unknownName(where, "option", name, KEYS);
  const { dpi, width, cut = "block", color } = options;
  if (color !== undefined && !COLORS.includes(color))
    throw unknownName(`${where} > color`, "kind of color", String(color), COLORS);
  if ((dpi === undefined) === (width === undefined))
    throw badInput(
      "raster-size",
      where,
      dpi === undefined ? "neither a dpi nor a width was given" : "both a dpi and a width were given",
      "give a dpi for a picture at its true size, or a width in pixels",
    );
  const { block } = tile;
  const size = cutSize(tile, cut, `${where} > cut`);
  const pixels = dpi !== undefined ? atDpi(block, dpi, where) : atWidth(block, width!, size, where);
  if (cut === "unit" && dpi !== undefined) refuseParts(size, dpi, where);
  const picture = {
    width: Math.max(1, Math.round((size.width * pixels.width) / block.width)),
    height: Math.max(1, Math.round((size.height * pixels.height) / block.height)),
  };
  refuseLarge(pixels, MOST_PIXELS_A_SIDE, size === block ? "the picture" : "a block of it", where);
  refuseLarge(picture, MOST_PIXELS_A_CUT, "the picture", where);
  return { grid: { ...pixels, block }, pixels: picture, color };
}

function atDpi(block: Size, dpi: number, where: string): Size {
  count(dpi, `${where} > dpi`, MOST_DPI, "dpi");
  refuseParts(block, dpi, where);
  return { width: pixelsAt(block.width, dpi), height: pixelsAt(block.height, dpi) };
}

function refuseParts(size: Size, dpi: number, where: string): void {
  if (!isWholePixels(size.width, dpi) || !isWholePixels(size.height, dpi))
    throw notWholePixels(`${where} > dpi`, size, dpi, nearestWhole(size, dpi, MOST_DPI));
}

function atWidth(block: Size, total: number, size: Size, where: string): Size {
  count(total, `${where} > width`, MOST_PIXELS_A_CUT, "pixels");
  const width = Math.max(1, Math.round((total * block.width) / size.width));
  return { width, height: Math.max(1, Math.round((width * block.height) / block.width)) };
}

function refuseLarge({ width, height }: Size, most: number, what: string, where: string): void {
  if (width <= most && height <= most && width * height <= MOST_PIXELS) return;
  throw badInput(
    "raster-size",
    where,
    `${what} would be ${width} x ${height} pixels`,
    `keep it to ${most} a side and ${MOST_PIXELS} in all: a smaller cut, or a lower dpi or width`,
  );
}

function count(value: number, where: string, max: number, unit: string): void {
  if (!Number.isInteger(value)) throw wrongType(where, value, "a whole number");
  if (value < 1 || value > max) throw outOfRange(where, value, { min: 1, max }, unit);
}

/** Pixels per inch along the block's width. */
export const effectiveDpi = (grid: Grid): number => (grid.width * UM_PER_INCH) / grid.block.width;
