import type { Cut } from "../../../output/cut.ts";
import { planRaster, type RasterizeOptions } from "../../../output/png/options.ts";
import type { Tile } from "../../../tile/tile.ts";
import { FIELD_WIDTH, fieldRepeats } from "../field-view.ts";
import type { Format, Order, Outline, Settings } from "./format.ts";
import { cutTag, sayCut } from "./names.ts";

/** Share of the work that painting is: colorways are nearly free. */
const PAINTED = 0.85;

/** A picture at true size, to print. */
export const png: Format = {
  about: "a picture at true size, to print",
  usual: true,
  together: true,
  check: (outline, settings) => checkPrint(outline, settings),
  says: (tile, settings) => sayPrint(tile, settings),
  make: (order) => {
    const { dpi, cut } = order.settings;
    return paint(order, printOf(order.settings), `${cutTag(cut)}-${dpi}dpi.png`);
  },
};

/** The pattern repeated, to look at. */
export const field: Format = {
  about: "a picture of the block repeated, to look at",
  usual: true,
  together: true,
  says: (tile) => {
    const { pixels } = planRaster(tile, fieldOf(tile), tile.name);
    return `the block repeated, ${pixels.width} x ${pixels.height} px`;
  },
  make: (order) => paint(order, fieldOf(order.tile), "-field.png"),
};

/** What a picture for print is asked for. */
export const printOf = ({ dpi, cut, color }: Settings): RasterizeOptions => ({ dpi, cut, color });

/** Refuses a dpi at which the block is no whole pixels. */
export const checkPrint = (outline: Outline, settings: Settings): void => {
  planRaster(outline, printOf(settings), `${outline.name} > rasterize`);
};

export function sayPrint(tile: Tile, settings: Settings): string {
  const { pixels } = planRaster(tile, printOf(settings), tile.name);
  return `${sayCut(settings.cut)}, ${pixels.width} x ${pixels.height} px at ${settings.dpi} dpi`;
}

const fieldOf = ({ block }: Order["tile"]): RasterizeOptions => ({
  width: FIELD_WIDTH,
  cut: fieldRepeats(block) satisfies Cut,
});

async function paint(order: Order, options: RasterizeOptions, ending: string): Promise<void> {
  const { tile, colorways, settings, onProgress, put } = order;
  const { rights, creator, recipe } = settings;
  const { rasterize } = await import("../../../output/png/rasterize.ts");
  const raster = await rasterize(tile, { ...options, onProgress: (done) => onProgress(done * PAINTED) });
  for (const [i, colorway] of colorways.entries()) {
    await put(
      `${tile.name}-${colorway.name}${ending}`,
      raster.png(colorway, { rights, creator, recipe }),
      colorway.name,
    );
    onProgress(PAINTED + ((1 - PAINTED) * (i + 1)) / colorways.length);
  }
}
