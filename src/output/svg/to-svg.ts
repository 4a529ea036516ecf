import type { Colorway } from "../../colorway/colorway.ts";
import type { Size } from "../../geometry/lattice.ts";
import { mm, pathData } from "../../geometry/path-text.ts";
import { checkTile } from "../../tile/check-tile.ts";
import type { Tile } from "../../tile/tile.ts";
import { aboutTile } from "../about.ts";
import { copiesInBlock } from "../copies.ts";
import { inksFor } from "../inks.ts";
import { keptText } from "../kept-recipe.ts";
import { xmlText, xmpPacket } from "../xmp.ts";
import { groundLeft, knockOut } from "./knock-out.ts";
import { readSvgOptions, type SvgOptions, type SvgPlan } from "./options.ts";
import { RECIPE_NAMESPACE } from "./recipe-in-svg.ts";

export type { Layering, SvgOptions } from "./options.ts";

/**
 * A tile in a colorway as an SVG 1.1 file at true size: `viewBox` in mm, the ground as a rectangle, and exactly one path
 * for each role, whose `id` is the role. Curves stay Béziers. The recipe and the XMP metadata are in `<metadata>`.
 *
 * @example toSvg(tile, colorway, { cut: { across: 2, down: 2 }, layers: "knocked-out", rights: "Hollin Quay Prints" })
 * @throws SprigwrightError `missing-ink` when the colorway lacks a role, `unknown-option`, `unknown-cut`,
 * `length-range`, `drawing-too-large`
 */
export function toSvg(tile: Tile, colorway: Colorway, options: SvgOptions = {}): string {
  return svgDrawing(tile, options)(colorway);
}

/** A tile as a drawing without colour, worked out once for all its colorways. */
export function svgDrawing(tile: Tile, options: SvgOptions): (colorway: Colorway) => string {
  checkTile(tile, "tile");
  const plan = readSvgOptions(tile, options, `${tile.name} > toSvg`);
  const shapes = shapesOf(tile, plan);
  return (colorway) => {
    const inks = inksFor(tile, colorway);
    const about = aboutTile(tile, colorway, plan.about);
    const drawn = shapes.map((shape, i) => shape(inks[i]!));
    const { width, height } = tile.block;
    return [
      `<svg xmlns="http://www.w3.org/2000/svg" ${sized(plan.size, "mm")} viewBox="0 0 ${mm(plan.size.width)} ${mm(plan.size.height)}">\n`,
      `  <title>${xmlText(about.title ?? "")}</title>\n`,
      `  <desc>Repeats straight every ${mm(width)} x ${mm(height)} mm. Digest ${tile.digest}.</desc>\n`,
      `  <metadata>\n${xmpPacket(about, "image/svg+xml")}\n`,
      `<recipe xmlns="${RECIPE_NAMESPACE}">${xmlText(keptText(tile, colorway.name))}</recipe>\n  </metadata>\n`,
      ...(plan.pattern ? asPattern(tile, plan.size, drawn) : drawn),
      "</svg>\n",
    ].join("");
  };
}

/** The ground and the layers, each waiting for its ink. */
function shapesOf(tile: Tile, { size, layers, pattern }: SvgPlan): ((ink: string) => string)[] {
  const knocked = layers === "knocked-out";
  const shown = pattern ? tile.block : size;
  const view = { minX: 0, minY: 0, maxX: shown.width, maxY: shown.height };
  const pathOf =
    (role: string, data: string) =>
    (ink: string): string =>
      `  <path id="${role}" fill="${ink}" d="${data}"/>\n`;
  const ground = knocked
    ? pathOf("ground", pathData(groundLeft(tile, shown)))
    : (ink: string): string => `  <rect id="ground" fill="${ink}" ${sized(shown)}/>\n`;
  const drawn = knocked ? knockOut(tile) : tile.layers;
  return [
    ground,
    ...drawn.map(({ role, path }) => pathOf(role, pathData(copiesInBlock(path, tile.block, view)))),
  ];
}

/** One block as a pattern, and a rectangle of it. No role's name has an underscore, so the id is free. */
function asPattern(tile: Tile, size: Size, drawn: readonly string[]): string[] {
  const id = `${tile.name}_repeat`;
  return [
    `  <defs>\n  <pattern id="${id}" patternUnits="userSpaceOnUse" ${sized(tile.block)}>\n`,
    ...drawn,
    `  </pattern>\n  </defs>\n  <rect fill="url(#${id})" ${sized(size)}/>\n`,
  ];
}

const sized = ({ width, height }: Size, unit = ""): string =>
  `width="${mm(width)}${unit}" height="${mm(height)}${unit}"`;
