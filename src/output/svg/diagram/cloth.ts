import type { Colorway } from "../../../colorway/colorway.ts";
import type { Size } from "../../../geometry/lattice.ts";
import { movePath } from "../../../geometry/matrix.ts";
import { type Box, boxOf, eachContour, joinPaths, type Path } from "../../../geometry/path.ts";
import { mm, pathData } from "../../../geometry/path-text.ts";
import type { Tile } from "../../../tile/tile.ts";
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
    ({ path }, i) => `<path fill="${inks[i + 1]}" d="${pathData(copiesIn(path, tile.block, view))}"/>`,
  );
  return `<g id="cloth"><rect fill="${inks[0]}" ${place} ${size}/>${layers.join("")}</g>`;
}

/** Every copy, moved by whole blocks, of every contour whose box reaches into the view. */
function copiesIn(path: Path, block: Size, view: Box): Path {
  const copies: Path[] = [];
  eachContour(path, (from, to, index) => {
    const contour = { points: path.points.subarray(from, to), contours: [path.contours[index]!] };
    const box = boxOf(contour);
    for (const dy of moves(box.minY, box.maxY, block.height, view.minY, view.maxY))
      for (const dx of moves(box.minX, box.maxX, block.width, view.minX, view.maxX))
        copies.push(movePath(contour, dx, dy));
  });
  return joinPaths(copies);
}

/** Multiples of `size` by which min..max can be moved to overlap low..high. */
function moves(min: number, max: number, size: number, low: number, high: number): number[] {
  const out: number[] = [];
  for (let k = Math.floor((low - max) / size) + 1; min + k * size < high; k++) out.push(k * size);
  return out;
}
