import { mm, pathData } from "../../geometry/path-text.ts";
import { xmlText } from "../xmp.ts";
import { checkPlate } from "./check-plate.ts";
import type { Plate } from "./separations.ts";

/**
 * A plate as an SVG 1.1 file at true size, in black: what is printed is one path, whose `id` is the role, and the marks are
 * another. `viewBox` is in mm from the trim's upper left corner; bleed and marks lie outside of it to all sides.
 */
export function plateToSvg(plate: Plate): string {
  checkPlate(plate, "plateToSvg");
  const { pattern, role, size, bleed, slug, path, marks } = plate;
  const edge = bleed + slug;
  const [width, height] = [mm(size.width + 2 * edge), mm(size.height + 2 * edge)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${mm(-edge)} ${mm(-edge)} ${width} ${height}">\n`,
    `  <title>${xmlText(`${pattern}, plate ${role}`)}</title>\n`,
    `  <desc>Trim ${mm(size.width)} x ${mm(size.height)} mm, bleed ${mm(bleed)} mm.</desc>\n`,
    `  <path id="${role}" d="${pathData(path)}"/>\n`,
    marks.contours.length > 0 ? `  <path id="marks_of_${role}" d="${pathData(marks)}"/>\n` : "",
    "</svg>\n",
  ].join("");
}
