import { strToU8 } from "fflate";
import { badInput, outOfRange, unknownName, wrongType } from "../../../errors/catalogue.ts";
import { isRecord } from "../../../params/compound.ts";
import { stepper, type Watch } from "../../../tile/steps.ts";
import { UM_PER_INCH } from "../../../units/length.ts";
import { pixelsAt } from "../../../units/pixels.ts";
import { addSides } from "../../png/accumulate.ts";
import { createBand } from "../../png/band.ts";
import { chunk, dataChunks, joinBytes } from "../../png/chunks.ts";
import { zlibStream } from "../../png/encode.ts";
import { ROWS } from "../../png/grid.ts";
import { headerBytes } from "../../png/header.ts";
import { textChunk, XMP_KEYWORD } from "../../png/notes.ts";
import { MOST_PIXELS } from "../../png/options.ts";
import { rowStream } from "../../png/row-stream.ts";
import { xmpPacket } from "../../xmp.ts";
import { type Page, pageBox } from "../page.ts";
import { checkPage } from "./check-page.ts";
import { coatsOf } from "./coats.ts";
import { pageEdges } from "./page-edges.ts";
import { type Colours, paintInk } from "./paint.ts";

/** Options of {@link pageToPng}. */
export interface PagePngOptions extends Watch {
  /** Dots per inch, 1 to 1200. Default 300, which is common practice for paper; 100 will do for a screen. */
  readonly dpi?: number;
}

const KEYS = ["dpi", "signal", "onProgress"];

/**
 * A page as a PNG at true size (pHYs), bleed included: truecolour, sRGB, edges smoothed by the exact area that each
 * shape takes of a pixel, the same bytes in every engine. Rectangles of cloth begin and end on whole pixels.
 *
 * @throws SprigwrightError `bad-page`, `missing-ink`, `number-range`, `raster-size`, `too-many-shapes`, `unknown-option`,
 * `wrong-type`; and the reason of `signal` when it is aborted
 */
export async function pageToPng(page: Page, options: PagePngOptions = {}): Promise<Uint8Array> {
  checkPage(page, "pageToPng");
  if (!isRecord(options)) throw wrongType("pageToPng", options, "options such as { dpi }");
  for (const key of Object.keys(options))
    if (!KEYS.includes(key)) throw unknownName(`pageToPng > ${key}`, "option", key, KEYS);
  const { dpi = 300 } = options as PagePngOptions;
  const where = `${page.title} > dpi`;
  if (!Number.isInteger(dpi)) throw wrongType(where, dpi, "a whole number of dots per inch");
  if (dpi < 1 || dpi > 1200) throw outOfRange(where, dpi, { min: 1, max: 1200 }, "dpi");
  const { minX, minY, maxX, maxY } = pageBox(page);
  const size = { width: maxX - minX, height: maxY - minY };
  const [width, height] = [size.width, size.height].map((um) =>
    Math.max(1, Math.round(pixelsAt(um, dpi))),
  ) as [number, number];
  if (width * height > MOST_PIXELS)
    throw badInput(
      "raster-size",
      where,
      `the picture would be ${width} x ${height} pixels`,
      `keep it to ${MOST_PIXELS} in all: a lower dpi, or a smaller page`,
    );
  const step = stepper(options, 0, 1);
  const coats = coatsOf(page);
  const edges = pageEdges(coats, { left: minX, top: minY, width, height, dpi }, ROWS);
  const band = createBand(width, ROWS);
  const colours = new Int32Array(width * ROWS);
  const rows = rowStream(width, width, 3);
  for (let b = 0; b < edges.bands; b++) {
    const top = b * ROWS;
    coats.forEach(({ ink }, coat) => {
      const bucket = coat * edges.bands + b;
      if (edges.starts[bucket] === edges.starts[bucket + 1]) return;
      addSides(band, edges, bucket, top);
      paintInk(band, colours, ink);
    });
    for (let row = 0; row < Math.min(ROWS, height - top); row++)
      rows.row((put) => eachColour(colours, row * width, width, put));
    await step((b + 1) / edges.bands);
  }
  const block = { width: (width * UM_PER_INCH) / dpi, height: (height * UM_PER_INCH) / dpi };
  return joinBytes([
    headerBytes({ width, height }, { width, height, block }, "truecolor"),
    textChunk(XMP_KEYWORD, strToU8(xmpPacket({ title: page.title }, "image/png")), false),
    ...zlibStream([rows.finish()]).map(dataChunks),
    chunk("IEND", new Uint8Array(0)),
  ]);
}

/** Runs of one colour in a row of `width` pixels that starts at `from`. */
function eachColour(
  colours: Colours,
  from: number,
  width: number,
  put: (colour: number, length: number) => void,
): void {
  for (let x = from; x < from + width; ) {
    const start = x;
    const colour = colours[x]!;
    while (x < from + width && colours[x] === colour) x++;
    put(colour, x - start);
  }
}
