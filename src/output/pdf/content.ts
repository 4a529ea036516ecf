import { isStraight } from "../../geometry/flatten.ts";
import type { Size } from "../../geometry/lattice.ts";
import { type Box, boxOf, CURVE, eachContour, type Path } from "../../geometry/path.ts";
import { mm } from "../../geometry/path-text.ts";
import { movesInto } from "../copies.ts";

/** Millimetres into points (1/72 in), as text for a content stream. */
export const POINTS_PER_MM: number = 72 / 25.4;

/** A number for a PDF: never an exponent (ISO 32000-1, 7.3.3), to `places` decimals, no trailing zeros. */
export function decimal(value: number, places = 6): string {
  const text = value.toFixed(places);
  return (text.includes(".") ? text.replace(/\.?0+$/, "") : text).replace(/^-0$/, "0");
}

/** A path as path construction operators in mm to the µm, to be followed by a painting operator. */
export function pathOperators(path: Path): string {
  const p = path.points;
  const at = (i: number): string => `${mm(p[i]!)} ${mm(p[i + 1]!)}`;
  const lines: string[] = [];
  eachContour(path, (from, to) => {
    lines.push(`${at(from)} m`);
    for (let i = from; i < to; i += CURVE) {
      const last = i + CURVE >= to;
      const end = last ? from : i + CURVE;
      if (!isStraight(p, i, end)) lines.push(`${at(i + 2)} ${at(i + 4)} ${at(end)} c`);
      else if (!last) lines.push(`${at(end)} l`);
    }
    lines.push("h");
  });
  return lines.join("\n");
}

/** A box (µm) as the `re` operator in mm. */
export const boxOperator = ({ minX, minY, maxX, maxY }: Box): string =>
  `${mm(minX)} ${mm(minY)} ${mm(maxX - minX)} ${mm(maxY - minY)} re`;

/** Which whole blocks `path` has to be moved by for its copies to reach all of `area` (both before scaling, µm). */
export function copiesInto(path: Path, block: Size, area: Box): { columns: number[]; rows: number[] } {
  const box = boxOf(path);
  return {
    columns: movesInto(box.minX, box.maxX, block.width, area.minX, area.maxX),
    rows: movesInto(box.minY, box.maxY, block.height, area.minY, area.maxY),
  };
}
