import type { Colorway } from "../../colorway/colorway.ts";
import { mm, pathData } from "../../geometry/path-text.ts";
import type { Tile } from "../../tile/tile.ts";
import { copiesInBlock } from "../copies.ts";
import { inksFor } from "../inks.ts";

/**
 * One block of a tile as an SVG 1.1 file at true size: `viewBox` in mm, the ground as a rectangle, and
 * exactly one path for each role, whose `id` is the role. Curves stay Béziers.
 *
 * @throws SprigwrightError `missing-ink` when the colorway lacks a role
 */
export function toSvg(tile: Tile, colorway: Colorway): string {
  const [ground, ...inks] = inksFor(tile, colorway);
  const { width, height } = tile.block;
  const size = `width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}"`;
  const layers = tile.layers.map(
    ({ role, path }, i) =>
      `  <path id="${role}" fill="${inks[i]}" d="${pathData(copiesInBlock(path, tile.block))}"/>\n`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size}>\n`,
    `  <title>${escaped(`${tile.name}, ${colorway.name}`)}</title>\n`,
    `  <desc>Repeats straight every ${mm(width)} x ${mm(height)} mm. Digest ${tile.digest}.</desc>\n`,
    `  <rect id="ground" fill="${ground}" width="${mm(width)}" height="${mm(height)}"/>\n`,
    ...layers,
    "</svg>\n",
  ].join("");
}

/** Text that XML takes as text: a colorway made by hand may have any name. */
const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
