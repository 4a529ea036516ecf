import type { Colorway } from "../../../colorway/colorway.ts";
import type { Box } from "../../../geometry/path.ts";
import { mm, pathData } from "../../../geometry/path-text.ts";
import type { Tile } from "../../../tile/tile.ts";
import { copiesInBlock } from "../../copies.ts";
import { inksFor } from "../../inks.ts";

/** Inks where no colorway is given, back to front. */
const GREYS = ["#d9d4ca", "#b9b4aa", "#8f8c86", "#6f6e6b", "#55565a", "#a8a296"];

/**
 * A tile's layers over a part of the cloth (µm), each one path: no seam within, so no renderer can draw a hairline.
 * @throws SprigwrightError `missing-ink` when the colorway lacks a role
 */
export function clothPicture(tile: Tile, colorway: Colorway | undefined, view: Box): string {
  const inks = colorway
    ? inksFor(tile, colorway)
    : ["#f3f0ea", ...tile.layers.map((_, i) => GREYS[i % GREYS.length]!)];
  const place = `x="${mm(view.minX)}" y="${mm(view.minY)}"`;
  const size = `width="${mm(view.maxX - view.minX)}" height="${mm(view.maxY - view.minY)}"`;
  const layers = tile.layers.map(
    ({ path }, i) => `<path fill="${inks[i + 1]}" d="${pathData(copiesInBlock(path, tile.block, view))}"/>`,
  );
  return `<g id="cloth"><rect fill="${inks[0]}" ${place} ${size}/>${layers.join("")}</g>`;
}
