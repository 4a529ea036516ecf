import { badInput, notWholePixels, wrongType } from "../../errors/catalogue.ts";
import type { Size } from "../../geometry/lattice.ts";
import { movePath } from "../../geometry/matrix.ts";
import { joinPaths } from "../../geometry/path.ts";
import { readParams } from "../../params/compound.ts";
import { integer } from "../../params/kinds.ts";
import type { Param } from "../../params/param.ts";
import { stepper, type Watch } from "../../tile/steps.ts";
import { isWholePixels, pixelsAt, wholePixelStep } from "../../units/pixels.ts";
import { addSides } from "../png/accumulate.ts";
import { clearBand, createBand, eachRun } from "../png/band.ts";
import { joinBytes } from "../png/chunks.ts";
import { paintLayer } from "../png/compose.ts";
import { collectEdges } from "../png/edges.ts";
import { zlibStream } from "../png/encode.ts";
import { type Grid, ROWS } from "../png/grid.ts";
import { rowStream } from "../png/row-stream.ts";
import { nearestWhole } from "../png/whole-pixels.ts";
import { checkPlate } from "./check-plate.ts";
import { greyPng } from "./grey-png.ts";
import { coverOf, packBits } from "./pack-bits.ts";
import type { Plate } from "./separations.ts";

/** Options of {@link plateToPng}. */
export interface PlatePngOptions extends Watch {
  /** Pixels per inch, a whole number from 1 to 4800. */
  readonly dpi: number;
  /**
   * Bits of a pixel: 8 (default) keeps smooth edges, as digital printers and engravers want them; 1 is ink or none, as
   * films and screens do: a pixel has ink when half of it is printed on.
   */
  readonly depth?: 1 | 8 | undefined;
}

/** Most pixels per inch. */
const MOST_DPI = 4800;

/** Most pixels along one side, and in all. */
const [MOST_PIXELS_A_SIDE, MOST_PIXELS] = [65_535, 1_073_741_824];

const later: Param<unknown, unknown, true> = { optional: true, read: (value) => value, schema: {} };
const spec = {
  dpi: integer({ about: "Pixels per inch.", min: 1, max: MOST_DPI }),
  depth: integer({ about: "Bits of a pixel.", min: 1, max: 8, default: 8 }),
  signal: later,
  onProgress: later,
} as const;

/**
 * A plate as a PNG in grey, at its true size: black where ink is printed, white elsewhere, the marks included.
 *
 * A sheet without marks has to be whole pixels, so that it repeats; room for marks is rounded up to whole pixels to the
 * right and below. The same plate gives the same bytes.
 *
 * @throws SprigwrightError `number-range`, `unknown-option`, `not-whole-pixels`, `raster-size`, `wrong-type`; and the reason
 * of `signal` when it is aborted
 */
export async function plateToPng(plate: Plate, options: PlatePngOptions): Promise<Uint8Array> {
  checkPlate(plate, "plateToPng");
  const where = `${plate.pattern} > plateToPng`;
  const { dpi, depth } = readParams(spec, options, where);
  if (depth !== 1 && depth !== 8) throw wrongType(`${where} > depth`, depth, "1 or 8 bits");
  const grid = gridOf(plate, dpi, where);
  const edge = plate.bleed + plate.slug;
  const path = movePath(joinPaths([plate.path, plate.marks]), edge, edge);
  const step = stepper(options, 0, 1);
  const edges = collectEdges([{ role: plate.role, path }], grid, ROWS);
  const band = createBand(grid.width, ROWS);
  const bytes = depth === 8 ? grid.width : Math.ceil(grid.width / 8);
  const stream = rowStream(bytes, bytes, 1);
  for (let b = 0; b < edges.bands; b++) {
    await step(b / edges.bands);
    clearBand(band, 0);
    addSides(band, edges, b, b * ROWS);
    paintLayer(band, 1);
    for (let row = 0; row < Math.min(ROWS, grid.height - b * ROWS); row++)
      stream.row((put) => {
        if (depth === 8) eachRun(band, row, (mix, length) => put(255 - coverOf(mix), length));
        else packBits((visit) => eachRun(band, row, visit), put);
      });
  }
  await step(1);
  return greyPng(
    grid,
    depth,
    `${plate.pattern}, plate ${plate.role}`,
    joinBytes(zlibStream([stream.finish()])),
  );
}

/** The pixels of a sheet with its bleed and marks. */
function gridOf({ size, bleed, slug }: Plate, dpi: number, where: string): Grid {
  const whole = (um: number): number => Math.ceil(um / wholePixelStep(dpi)) * wholePixelStep(dpi);
  const edge = 2 * (bleed + slug);
  const sheet: Size = { width: size.width + edge, height: size.height + edge };
  if (slug === 0 && !(isWholePixels(sheet.width, dpi) && isWholePixels(sheet.height, dpi)))
    throw notWholePixels(`${where} > dpi`, sheet, dpi, nearestWhole(sheet, dpi, MOST_DPI));
  const block = { width: whole(sheet.width), height: whole(sheet.height) };
  const [width, height] = [pixelsAt(block.width, dpi), pixelsAt(block.height, dpi)];
  if (width > MOST_PIXELS_A_SIDE || height > MOST_PIXELS_A_SIDE || width * height > MOST_PIXELS)
    throw badInput(
      "raster-size",
      where,
      `the plate would be ${width} x ${height} pixels`,
      `keep it to ${MOST_PIXELS_A_SIDE} a side and ${MOST_PIXELS} in all: a smaller cut, or a lower dpi`,
    );
  return { width, height, block };
}
