import { badInput } from "../../errors/catalogue.ts";
import { hexOf } from "../../motif/artwork/color.ts";
import { nameFills } from "../../motif/artwork/roles.ts";
import { clusterOf } from "../../motif/artwork/trace/cluster.ts";
import { type Bin, binsOf } from "../../motif/artwork/trace/histogram.ts";
import type { Pixels } from "../../motif/artwork/trace/picture.ts";
import { BESIDE } from "../../motif/artwork/trace/purity.ts";
import { rasterOf } from "../../motif/artwork/trace/raster.ts";
import { readPicture } from "../../motif/artwork/trace/read-picture.ts";
import { readParams } from "../../params/compound.ts";
import { integer, text } from "../../params/kinds.ts";
import { createRandom } from "../../seed/random.ts";
import { type Palette, readPalette } from "../palette.ts";
import { kMeans } from "./k-means.ts";

/** Options of {@link paletteFromImage}. */
export interface ImagePaletteOptions {
  /** Name of the palette, in kebab-case. */
  readonly name: string;
  /** Number of inks, 1 to 32; default 6. Fewer come where the picture has fewer colours. */
  readonly count?: number;
  /** Any text: where the search begins. Another may find other inks that serve as well; default `"1"`. */
  readonly seed?: string;
}

const spec = {
  name: text({ about: "Name of the palette.", max: 40 }),
  count: integer({ about: "Number of inks.", min: 1, max: 32, default: 6 }),
  seed: text({ about: "Where the search begins.", max: 200, default: "1" }),
};

/** Most shades that are looked at, the most frequent ones: a photograph has some ten thousand. */
const MOST_SHADES = 16_384;
/** Half of what a pixel of the histogram may cover. */
const OPAQUE = 128;

/**
 * A palette from a picture, the bytes of a PNG or pixels: k-means in OKLab, begun by a seed. A colour counts by the square
 * root of its area, so that a small bright thing is not lost in a large sky. The ink of the largest area comes first;
 * each is called by a word for its colour. Transparent pixels count for nothing; values are taken as sRGB.
 *
 * @example paletteFromImage(await readFile("harbour.png"), { name: "harbour", count: 6 })
 * @throws SprigwrightError `not-png`, `bad-picture`, `picture-too-large`, `empty-palette` when all is transparent,
 * `number-range`, `unknown-option`, `wrong-type`
 */
export function paletteFromImage(
  picture: Uint8Array | ArrayBuffer | Pixels,
  options: ImagePaletteOptions,
): Palette {
  const where = "paletteFromImage";
  const { name, count, seed } = readParams(spec, options, where);
  const { raster } = rasterOf(readPicture(picture, `${where} > picture`));
  const every = new Uint8Array(raster.width * raster.height).fill(BESIDE);
  const bins = binsOf(raster, every)
    .filter(({ mix }) => mix[3] >= OPAQUE)
    .slice(0, MOST_SHADES);
  if (bins.length === 0)
    throw badInput(
      "empty-palette",
      where,
      "all of the picture is transparent",
      "give one with something on it",
    );
  const whole = new Map(bins.map((bin) => [bin.key, bin]));
  const weighed = bins.map((bin): Bin => ({ ...bin, pixels: Math.sqrt(bin.pixels) }));
  const found = kMeans(weighed, count, createRandom(seed).fork("palette")).map((cluster) => {
    // Which pixels belong together is settled by weight; what colour they have, by all of them.
    const { pixels, mix } = clusterOf(cluster.bins.map(({ key }) => whole.get(key)!));
    const [red, green, blue] = mix.map((channel) => (channel * 255) / mix[3]);
    return { pixels, fill: hexOf(red!, green!, blue!) };
  });
  found.sort((p, q) => q.pixels - p.pixels || (p.fill < q.fill ? -1 : 1));
  const fills = [...new Set(found.map(({ fill }) => fill))];
  const inks = Object.entries(nameFills(fills)).map(([fill, word]) => [word, fill]);
  return readPalette({ name, inks: Object.fromEntries(inks) }, where);
}
