import { pathOfRings } from "../../geometry/clip.ts";
import type { Ring } from "../../geometry/flatten.ts";
import type { Box, Path } from "../../geometry/path.ts";
import { mmToUm } from "../../units/length.ts";
import type { Fill } from "./page.ts";

/** Ink of letters, of what is said in passing, and of fine lines. */
export const INK = "#26241f";
export const QUIET = "#736f66";
export const HAIR = "#c9c5bb";
export const PAPER = "#ffffff";

/** A box in mm as whole µm: boxes of one size in mm are of one size in µm, wherever they lie. */
export function boxOfMm(x: number, y: number, width: number, height: number): Box {
  const [minX, minY] = [mmToUm(x), mmToUm(y)];
  return { minX, minY, maxX: minX + mmToUm(width), maxY: minY + mmToUm(height) };
}

const ringOf = ({ minX, minY, maxX, maxY }: Box): Ring =>
  Float64Array.of(minX, minY, maxX, minY, maxX, maxY, minX, maxY);

/** A box as a path. */
export const boxPath = (box: Box): Path => pathOfRings([ringOf(box)]);

/** A filled rectangle (mm). */
export const rectangle = (x: number, y: number, width: number, height: number, ink: string): Fill => ({
  kind: "fill",
  path: boxPath(boxOfMm(x, y, width, height)),
  ink,
});

/** Several rectangles (mm) in one ink, as one shape: ticks, rules, dashes. */
export const rectangles = (
  boxes: readonly (readonly [x: number, y: number, width: number, height: number])[],
  ink: string,
): Fill => ({ kind: "fill", path: pathOfRings(boxes.map((box) => ringOf(boxOfMm(...box)))), ink });

/** The edge of a rectangle (mm), drawn inwards, `weight` mm wide. */
export function edge(
  [x, y, width, height]: readonly [x: number, y: number, width: number, height: number],
  weight: number,
  ink: string,
): Fill {
  return rectangles(
    [
      [x, y, width, weight],
      [x, y + height - weight, width, weight],
      [x, y + weight, weight, height - 2 * weight],
      [x + width - weight, y + weight, weight, height - 2 * weight],
    ],
    ink,
  );
}
