import type { Images } from "../images.ts";
import type { Matrix } from "../matrix.ts";

/**
 * How near (µm) the image of a point must come to it for the two to count as one: points are rounded to whole µm, and
 * so are the images of those that an operation does not map to whole ones.
 */
const NEAR = 2;

/** Whether an operation leaves a point where it is, to within what rounding moves it. */
export function fixesPoint([a, b, c, d, e, f]: Matrix, x: number, y: number): boolean {
  const [ox, oy] = [a * x + c * y + e - x, b * x + d * y + f - y];
  return ox * ox + oy * oy <= NEAR * NEAR;
}

/** The operations of a repeat, each with the translation that goes with it, that fix a point; not the identity. */
export function fixing(images: Images, x: number, y: number): Matrix[] {
  const found: Matrix[] = [];
  images.operations.forEach((operation, index) => {
    if (index === 0) return;
    const [a, b, c, d, e, f] = operation;
    const [ox, oy] = [a * x + c * y + e, b * x + d * y + f];
    images.between([ox, oy, ox, oy], [x, y, x, y], NEAR, (dx, dy) => {
      const matrix: Matrix = [a, b, c, d, e + dx, f + dy];
      if (fixesPoint(matrix, x, y)) found.push(matrix);
    });
  });
  return found;
}
