import type { Colorway } from "../../colorway/colorway.ts";
import { mm } from "../../geometry/path-text.ts";
import { cornerOf } from "../../tile/finish.ts";
import type { Tile } from "../../tile/tile.ts";
import { clothPicture } from "./diagram/cloth.ts";
import { entriesFor } from "./diagram/entries.ts";
import { idMarks } from "./diagram/labels.ts";
import { legend } from "./diagram/legend.ts";
import {
  axisMarks,
  centreMarks,
  elementsShown,
  INK,
  PENCIL,
  unitShape,
  vectorMarks,
} from "./diagram/marks.ts";
import { escaped, n } from "./diagram/symbols.ts";

/** What {@link repeatDiagram} may be told. */
export interface DiagramOptions {
  /** Inks of the picture beneath. Default: quiet greys. */
  readonly colorway?: Colorway;
  /** Width of the drawing on a screen, in pixels. Default 960. */
  readonly width?: number;
  /** Whether placements bear their ids. Default true. */
  readonly ids?: boolean;
  /** Whether a legend stands below. Default true. */
  readonly legend?: boolean;
}

/**
 * How a tile repeats, as an SVG drawing: the unit in full colour on a pale cloth, the block, the lattice vectors, the
 * placements with their ids (which `tile.placements` lists and `adjusted` takes; of very long ones the beginning), and
 * every centre, mirror line and glide line in the block, with the symbols of the International Tables for Crystallography, Vol. A.
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
  // A corner stands alone, a border goes on to both sides, everything else all around.
  const beside = isCorner ? 0 : Math.round(margin * 1000);
  const above = tile.arrangement.border ? 0 : beside;
  const seen = {
    minX: -beside,
    minY: -above,
    maxX: tile.block.width + beside,
    maxY: tile.block.height + above,
  };
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${across}" height="${down}" viewBox="${box}" font-family="Helvetica, Arial, sans-serif" fill="${INK}">`,
    `<title>${escaped(`How ${tile.name} repeats`)}</title>`,
    `<defs>${clothPicture(tile, options.colorway, seen)}<clipPath id="view"><rect ${rect}/></clipPath><clipPath id="unit"><path d="${unit}"/></clipPath></defs>`,
    `<rect x="${n(view.x)}" y="${n(view.y)}" width="${n(view.width)}" height="${n(view.height + key.height)}" fill="#fff"/>`,
    `<g clip-path="url(#view)" opacity="${isCorner ? 0.75 : 0.4}"><use href="#cloth"/></g>`,
    isCorner
      ? ""
      : `<g clip-path="url(#unit)"><use href="#cloth"/></g><path d="${unit}" fill="none" stroke="#fff" stroke-width="${n(thin * 4)}" stroke-opacity="0.8"/><path id="unit-outline" d="${unit}" fill="none" stroke="${PENCIL}" stroke-width="${n(thin * 1.4)}"/>`,
    `<rect id="block-outline" ${blockRect} fill="none" stroke="${INK}" stroke-width="${n(thin * 0.8)}"/>`,
    axisMarks(axes, thin),
    isCorner ? "" : vectorMarks(tile, thin, size, centres.length > 0 ? thin * 7 : 0),
    isCorner || options.ids === false ? "" : idMarks(tile, centres, thin, size),
    centreMarks(centres, thin),
    `<g font-size="${n(size * 0.8)}">${key.svg}</g>`,
    "</svg>\n",
  ]
    .filter((line) => line !== "")
    .join("\n");
}
