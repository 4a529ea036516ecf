import { motifTooLarge } from "../../errors/catalogue.ts";
import { flatten } from "../../geometry/flatten.ts";
import { type Grid, PARTS } from "./grid.ts";

/** Farthest that sides may stray from their curve, in pixels. Finer is no better to be seen, coarser is. */
const TOLERANCE = 0.02;

/** Fixed-point coordinates stay below this, so that 32 bits hold every sum of two. */
const FARTHEST = 0x2000_0000;

/** Whole numbers below this are exact as doubles, and so is the double of each. */
const EXACT = Number.MAX_SAFE_INTEGER / 2;

/**
 * One contour as a polygon on the grid of 1/256 pixel, x, y, x, y …, moved by whole blocks so that its box
 * starts within the block.
 *
 * The curve is cut into sides about the contour's own first point, and rounding to the grid is exact integer
 * arithmetic. So a contour moved by a whole number of pixels gives the same polygon, moved: a pattern can
 * be rolled, and a copy at the opposite edge fits without a seam.
 */
export function snapContour(contour: Int32Array, grid: Grid): Int32Array {
  const [originX, originY] = [contour[0]!, contour[1]!];
  const local = contour.map((value, i) => value - (i % 2 === 0 ? originX : originY));
  const { width, height, block } = grid;
  const tolerance = TOLERANCE * Math.min(block.width / width, block.height / height);
  const ring = flatten({ points: local, contours: [local.length / 6] }, tolerance)[0]!;
  const out = new Int32Array(ring.length);
  snapAxis(ring, out, 0, originX, width * PARTS, block.width);
  snapAxis(ring, out, 1, originY, height * PARTS, block.height);
  return out;
}

/** Rounds (origin + offset) · parts / size to whole numbers for every other offset, `axis` first. */
function snapAxis(
  offsets: Float64Array,
  out: Int32Array,
  axis: number,
  origin: number,
  parts: number,
  size: number,
): void {
  let reach = 1;
  for (let i = axis; i < offsets.length; i += 2) reach = Math.max(reach, Math.abs(offsets[i]!));
  if ((reach / size) * parts >= FARTHEST)
    throw motifTooLarge(
      "rasterize",
      `a shape ${Math.ceil(reach / 1000)} mm long goes round a block of ${size / 1000} mm too often`,
      "use smaller motifs, a larger repeat, or fewer pixels",
    );
  // Offsets in 1/fine µm, as fine as the products below stay whole numbers that doubles hold exactly.
  let fine = 256;
  while (fine > 1 && (reach + size) * fine * parts >= EXACT) fine /= 2;
  const whole = floorDivide(origin * parts, size);
  const divisor = size * fine;
  const base = (origin * parts - whole * size) * fine + Math.floor(divisor / 2);
  let least = Number.POSITIVE_INFINITY;
  for (let i = axis; i < offsets.length; i += 2) {
    const value = floorDivide(base + Math.round(offsets[i]! * fine) * parts, divisor);
    out[i] = value;
    if (value < least) least = value;
  }
  const home = whole + least - floorDivide(whole + least, parts) * parts - least;
  for (let i = axis; i < out.length; i += 2) out[i] = out[i]! + home;
}

/** The whole part of n / d, rounded down: exact for whole n below 2^53 and whole d, whatever the division rounds. */
function floorDivide(n: number, d: number): number {
  const quotient = Math.floor(n / d);
  const rest = n - quotient * d;
  return rest < 0 ? quotient - 1 : rest >= d ? quotient + 1 : quotient;
}
