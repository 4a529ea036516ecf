import type { Colorway } from "../../colorway/colorway.ts";
import { cornerOf } from "../../tile/finish.ts";
import type { Tile } from "../../tile/tile.ts";
import { copiesInBlock } from "../copies.ts";
import { inksFor } from "../inks.ts";
import { entriesFor } from "./diagram/entries.ts";
import { legend } from "./diagram/legend.ts";
import {
  axisMarks,
  centreMarks,
  elementsShown,
  INK,
  numberMarks,
  PENCIL,
  unitShape,
  vectorMarks,
} from "./diagram/marks.ts";
import { escaped, n } from "./diagram/symbols.ts";
import { mm, pathData } from "./path-data.ts";

/** What {@link repeatDiagram} may be told. */
export interface DiagramOptions {
  /** Inks of the picture beneath. Default: quiet greys. */
  readonly colorway?: Colorway;
  /** Width of the drawing on a screen, in pixels. Default 960. */
  readonly width?: number;
  /** Whether placements are numbered. Default true. */
  readonly numbers?: boolean;
  /** Whether a legend stands below. Default true. */
  readonly legend?: boolean;
}

const GREYS = ["#d9d4ca", "#b9b4aa", "#8f8c86", "#6f6e6b", "#55565a", "#a8a296"];

/**
 * How a tile repeats, as an SVG drawing: the unit in full colour on a pale cloth, the block, the lattice vectors, the
 * numbered placements (in the order of `tile.placements`), and every centre, mirror line and glide line in the block,
 * with the symbols of the International Tables for Crystallography, Vol. A.
 *
 * @throws SprigwrightError `missing-ink` when the colorway lacks a role
 */
export function repeatDiagram(tile: Tile, options: DiagramOptions = {}): string {
  const [width, height] = [tile.block.width / 1000, tile.block.height / 1000];
  const longer = Math.max(width, height);
  const [thin, size, margin] = [longer * 0.0022, longer * 0.03, longer * 0.075];
  const view = { x: -margin, y: -margin, width: width + 2 * margin, height: height + 2 * margin };
  const isCorner = cornerOf(tile.arrangement) !== undefined;
  const { centres, axes } = elementsShown(tile);
  const key =
    options.legend === false
      ? { svg: "", height: 0 }
      : legend(entriesFor(tile, thin, size), 0, view.y + view.height, width, size * 0.8);
  const box = `${n(view.x)} ${n(view.y)} ${n(view.width)} ${n(view.height + key.height)}`;
  const across = options.width ?? 960;
  const down = Math.round((across * (view.height + key.height)) / view.width);
  const rect = `x="${n(view.x)}" y="${n(view.y)}" width="${n(view.width)}" height="${n(view.height)}"`;
  const blockRect = `width="${mm(tile.block.width)}" height="${mm(tile.block.height)}"`;
  const unit = unitShape(tile);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${across}" height="${down}" viewBox="${box}" font-family="Helvetica, Arial, sans-serif" fill="${INK}">`,
    `<title>${escaped(`How ${tile.name} repeats`)}</title>`,
    `<defs>${blockPicture(tile, options.colorway)}<clipPath id="view"><rect ${rect}/></clipPath><clipPath id="only-block"><rect ${blockRect}/></clipPath><clipPath id="unit"><path d="${unit}"/></clipPath></defs>`,
    `<rect x="${n(view.x)}" y="${n(view.y)}" width="${n(view.width)}" height="${n(view.height + key.height)}" fill="#fff"/>`,
    `<g clip-path="url(#view)" opacity="0.4">${isCorner ? '<use href="#block"/>' : copies(tile)}</g>`,
    isCorner
      ? ""
      : `<g clip-path="url(#unit)">${copies(tile)}</g><path d="${unit}" fill="none" stroke="#fff" stroke-width="${n(thin * 4)}" stroke-opacity="0.8"/><path id="unit-outline" d="${unit}" fill="none" stroke="${PENCIL}" stroke-width="${n(thin * 1.4)}"/>`,
    `<rect id="block-outline" ${blockRect} fill="none" stroke="${INK}" stroke-width="${n(thin * 0.8)}"/>`,
    axisMarks(axes, thin),
    isCorner ? "" : vectorMarks(tile, thin, size, centres.length > 0 ? thin * 7 : 0),
    isCorner || options.numbers === false ? "" : numberMarks(tile, thin, size),
    centreMarks(centres, thin),
    `<g font-size="${n(size * 0.8)}">${key.svg}</g>`,
    "</svg>\n",
  ]
    .filter((line) => line !== "")
    .join("\n");
}

function blockPicture(tile: Tile, colorway: Colorway | undefined): string {
  const inks = colorway
    ? inksFor(tile, colorway)
    : ["#f3f0ea", ...tile.layers.map((_, i) => GREYS[i % GREYS.length]!)];
  const layers = tile.layers.map(
    ({ path }, i) => `<path fill="${inks[i + 1]}" d="${pathData(copiesInBlock(path, tile.block))}"/>`,
  );
  const size = `width="${mm(tile.block.width)}" height="${mm(tile.block.height)}"`;
  return `<g id="block" clip-path="url(#only-block)"><rect fill="${inks[0]}" ${size}/>${layers.join("")}</g>`;
}

/** The block and the eight around it. */
function copies({ block: { width, height } }: Tile): string {
  const offsets = [-1, 0, 1];
  return offsets
    .flatMap((j) => offsets.map((i) => `<use href="#block" x="${mm(i * width)}" y="${mm(j * height)}"/>`))
    .join("");
}
