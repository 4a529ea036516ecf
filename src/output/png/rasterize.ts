import type { Colorway } from "../../colorway/colorway.ts";
import { badInput } from "../../errors/catalogue.ts";
import { within } from "../../errors/error.ts";
import { MOST_ROLES } from "../../motif/motif.ts";
import { checkTile } from "../../tile/check-tile.ts";
import { stepper } from "../../tile/steps.ts";
import type { Tile } from "../../tile/tile.ts";
import { inksFor } from "../inks.ts";
import { chunk, dataChunks, joinBytes } from "./chunks.ts";
import { collectEdges } from "./edges.ts";
import { encode } from "./encode.ts";
import { headerBytes } from "./header.ts";
import { shareLevels } from "./levels.ts";

import { noteChunks } from "./notes.ts";
import { effectiveDpi, planRaster, type RasterizeOptions } from "./options.ts";
import { paletteBytes } from "./palette.ts";
import { paint } from "./picture.ts";

export type { RasterizeOptions } from "./options.ts";

/** A picture without colour, compressed once. Frozen. */
export interface Raster {
  /** Pixels across and down the whole picture. */
  readonly width: number;
  readonly height: number;
  /** Pixels per inch along the width, at the pattern's true size. */
  readonly dpi: number;
  /**
   * The picture in a colorway: an indexed PNG at its true size (pHYs), in sRGB, with the recipe in an iTXt
   * chunk. Only the palette and that text are written anew; the pixels are the bytes that are there.
   * @throws SprigwrightError `missing-ink` when the colorway lacks a role
   */
  readonly png: (colorway: Colorway) => Uint8Array;
}

/** Rows painted at a time: any number gives the same bytes. */
const ROWS = 64;

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
  const { grid, across, down } = planRaster(tile.block, options, where);
  const drawn = ["ground", ...tile.layers.map((layer) => layer.role)];
  const roles = [...new Set(drawn)];
  if (roles.length > MOST_ROLES)
    throw badInput("too-many-roles", where, `${roles.length} roles`, `draw with at most ${MOST_ROLES}`);

  const [painting, encoding] = [stepper(options, 0, 0.7), stepper(options, 0.7, 1)];
  await painting(0);
  const edges = within(tile.name, () => collectEdges(tile.layers, grid, rows));
  const layerRoles = tile.layers.map((layer) => roles.indexOf(layer.role));
  const picture = await paint(grid, edges, layerRoles, painting);
  const levels = shareLevels(roles.length, picture.pairs);
  const stream = await encode(picture, levels.entryOf, across, down, encoding);

  const [width, height] = [grid.width * across, grid.height * down];
  const [widthUm, heightUm] = [tile.block.width * across, tile.block.height * down];
  const head = headerBytes({ width, height, widthUm, heightUm });
  const tail = joinBytes([dataChunks(stream), chunk("IEND", new Uint8Array(0))]);
  const png = (colorway: Colorway): Uint8Array => {
    const given = inksFor(tile, colorway);
    const inks = roles.map((role) => given[drawn.indexOf(role)]!);
    const palette = chunk("PLTE", paletteBytes(levels, inks));
    return joinBytes([head, palette, noteChunks(tile, colorway.name), tail]);
  };
  return Object.freeze({ width, height, dpi: effectiveDpi(grid), png });
}
