import type { Colorway } from "../../colorway/colorway.ts";
import type { Size } from "../../geometry/lattice.ts";
import type { Path } from "../../geometry/path.ts";
import { mm, pathData } from "../../geometry/path-text.ts";
import { checkTile } from "../../tile/check-tile.ts";
import type { Tile } from "../../tile/tile.ts";
import { notesOf } from "../about.ts";
import { copiesInBlock } from "../copies.ts";
import { inksFor } from "../inks.ts";
import { xmlText, xmpPacket } from "../xmp.ts";
import { knockOut } from "./knock-out.ts";
import { readSvgOptions, type SvgOptions, type SvgPlan } from "./options.ts";
import { RECIPE_NAMESPACE } from "./recipe-in-svg.ts";

export type { Layering, SvgOptions } from "./options.ts";

/**
 * A tile in a colorway as an SVG 1.1 file at true size: `viewBox` in mm, the ground as a rectangle, and exactly one path
 * for each role, whose `id` is the role. Curves stay Béziers. XMP is in `<metadata>`, and so is the recipe.
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
    const { about, kept } = notesOf(tile, colorway, plan.notes);
    const drawn = shapes.map((shape, i) => shape(inks[i]!));
    const { width, height } = tile.block;
    return [
      `<svg xmlns="http://www.w3.org/2000/svg" ${sized(plan.size, "mm")} viewBox="0 0 ${mm(plan.size.width)} ${mm(plan.size.height)}">\n`,
      `  <title>${xmlText(about.title ?? "")}</title>\n`,
      `  <desc>Repeats straight every ${mm(width)} x ${mm(height)} mm. Digest ${tile.digest}.</desc>\n`,
      `  <metadata>\n${xmpPacket(about, "image/svg+xml")}\n`,
      kept === undefined ? "" : `<recipe xmlns="${RECIPE_NAMESPACE}">${xmlText(kept)}</recipe>\n`,
      "  </metadata>\n",
      ...(plan.pattern ? asPattern(tile, plan.size, drawn) : drawn),
      "</svg>\n",
    ].join("");
  };
}

/** The ground and the layers, each waiting for its ink. */
function shapesOf(tile: Tile, { size, layers, pattern }: SvgPlan): ((ink: string) => string)[] {
  const shown = pattern ? tile.block : size;
  const pathOf = (role: string, path: Path): ((ink: string) => string) => {
    const data = pathData(path);
    return (ink) => `  <path id="${role}" fill="${ink}" d="${data}"/>\n`;
  };
  if (layers === "knocked-out") {
    const roles = ["ground", ...tile.layers.map(({ role }) => role)];
    return knockOut(tile, shown).map((path, i) => pathOf(roles[i]!, path));
  }
  const view = { minX: 0, minY: 0, maxX: shown.width, maxY: shown.height };
  return [
    (ink) => `  <rect id="ground" fill="${ink}" ${sized(shown)}/>\n`,
    ...tile.layers.map(({ role, path }) => pathOf(role, copiesInBlock(path, tile.block, view))),
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
