import type { Colorway } from "../../colorway/colorway.ts";
import { badInput } from "../../errors/catalogue.ts";
import { within } from "../../errors/error.ts";
import { MOST_ROLES } from "../../motif/motif.ts";
import { checkTile } from "../../tile/check-tile.ts";
import { stepper } from "../../tile/steps.ts";
import type { Tile } from "../../tile/tile.ts";
import { type FileNotes, notesOf } from "../about.ts";
import { inksFor } from "../inks.ts";
import { chunk, joinBytes } from "./chunks.ts";
import { data, slowData } from "./data.ts";
import { collectEdges } from "./edges.ts";
import { ROWS } from "./grid.ts";
import { headerBytes } from "./header.ts";
import { shareLevels } from "./levels.ts";
import { noteChunks } from "./notes.ts";
import { type ColorType, effectiveDpi, planRaster, type RasterizeOptions } from "./options.ts";
import { paletteBytes } from "./palette.ts";
import { paint } from "./picture.ts";
import { colorsOf } from "./truecolor.ts";

export type { ColorType, RasterizeOptions } from "./options.ts";

/** A picture without colour, painted once. Frozen. */
export interface Raster {
  /** Pixels across and down the whole picture. */
  readonly width: number;
  readonly height: number;
  /** Pixels per inch along the width, at the pattern's true size. */
  readonly dpi: number;
  /** How its PNG files hold colours: as asked for, or as the roles needed. */
  readonly color: ColorType;
  /**
   * The picture in a colorway: a PNG at its true size (pHYs), in sRGB, with the recipe in an iTXt chunk and title,
   * subject and rights as XMP. Indexed, only the palette and the texts are written anew; the pixels are the bytes
   * that are there. Truecolour is compressed anew.
   * @param about title (default: pattern and colorway), subject (default: the pattern's), rights and creator; and
   * `recipe: false` to leave the recipe out
   * @throws SprigwrightError `missing-ink` when the colorway lacks a role
   */
  readonly png: (colorway: Colorway, about?: FileNotes) => Uint8Array;
}

/**
 * The mean square error of shares from which on a palette is too coarse: 39 dB away from truecolour if every two roles
 * that meet were black and white, some 46 dB in the colours of a real pattern. Up to 16 roles stay below it.
 */
const COARSE = 1.26e-4;

/**
 * Paints a tile into pixels, without colour, once for all its colorways.
 *
 * Edges are smoothed by the exact area that each shape takes of a pixel; shapes that cross the block's edge go
 * on at the opposite one. Memory grows with the outlines and the file, not with the number of pixels.
 *
 * @param rows how many rows are painted at a time; only tests have reason to give it
 * @throws SprigwrightError `not-whole-pixels`, `raster-size`, `number-range`, `wrong-type`, `unknown-option`,
 * `too-many-roles`, `motif-too-large`; and the reason of `signal` when it is aborted
 */
export async function rasterize(tile: Tile, options: RasterizeOptions, rows: number = ROWS): Promise<Raster> {
  checkTile(tile, "rasterize > tile");
  const where = `${tile.name} > rasterize`;
  const { grid, pixels, color: asked } = planRaster(tile, options, where);
  const drawn = ["ground", ...tile.layers.map((layer) => layer.role)];
  const roles = [...new Set(drawn)];
  if (roles.length > MOST_ROLES)
    throw badInput("too-many-roles", where, `${roles.length} roles`, `draw with at most ${MOST_ROLES}`);

  const [painting, encoding] = [stepper(options, 0, 0.7), stepper(options, 0.7, 1)];
  await painting(0);
  const edges = within(tile.name, () => collectEdges(tile.layers, grid, rows));
  const layerRoles = tile.layers.map((layer) => roles.indexOf(layer.role));
  // The whole block, whatever the cut shows of it: all cuts of a tile have one palette, and the same pixels.
  const picture = await paint(grid, edges, layerRoles, painting);
  const levels = shareLevels(roles.length, picture.pairs);
  const color = asked ?? (levels.loss > COARSE * grid.width * grid.height ? "truecolor" : "indexed");
  const { entryOf } = levels;
  const indexed =
    color === "indexed"
      ? await slowData(picture, pixels, { of: (mix) => entryOf[mix]!, bytes: 1, last: true }, encoding)
      : undefined;
  await encoding(1);

  const head = headerBytes(pixels, grid, color);
  const png = (colorway: Colorway, given: FileNotes = {}): Uint8Array => {
    const known = inksFor(tile, colorway);
    const inks = roles.map((role) => known[drawn.indexOf(role)]!);
    const { about, kept } = notesOf(tile, colorway, given);
    const notes = noteChunks(about, kept);
    const palette = indexed ? [chunk("PLTE", paletteBytes(levels, inks))] : [];
    const body = indexed ?? data(picture, pixels, { of: colorsOf(inks), bytes: 3, last: false });
    return joinBytes([head, ...palette, notes, ...body, chunk("IEND", new Uint8Array(0))]);
  };
  return Object.freeze({ ...pixels, dpi: effectiveDpi(grid), color, png });
}
