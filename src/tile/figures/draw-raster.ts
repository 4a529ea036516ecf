import type { Outline } from "../../geometry/outline.ts";
import { fillOutline, fillScratch } from "./fill.ts";
import { gridOf, type Raster } from "./raster.ts";
import type { Scene } from "./scene.ts";

/** Pixels for each image: enough that a hole between motifs spans a few. */
const EACH = 200;
const LEAST = 32_768;
const MOST = 1_048_576;

/** Draws the real outlines of all images. The number of pixels follows the number of images. */
export function rasterOf({ lattice: { block }, copies, cells }: Scene): Raster {
  const wanted = Math.max(LEAST, Math.min(MOST, copies.length * cells.length * EACH));
  const grid = gridOf(block, wanted);
  const { columns, rows } = grid;
  const raster = { ...grid, ink: new Uint8Array(columns * rows) };
  const scratch = fillScratch(rows);
  const { ink } = raster;
  const setRun = (row: number, from: number, to: number): void => {
    for (let column = from; column < to; column++) {
      const at = row * columns + (column & (columns - 1));
      ink[at] = ink[at]! | 1;
    }
  };
  for (const { outline } of copies)
    for (const [dx, dy] of cells) {
      fillOutline(raster, outline, dx, dy, scratch, setRun);
      trace(raster, outline, dx, dy);
    }
  return raster;
}

/** Marks the pixels that the sides of an outline pass through, so that no stem or dot is missed. */
function trace(
  { columns, rows, width, height, ink }: Raster,
  outline: Outline,
  dx: number,
  dy: number,
): void {
  const { points, rings } = outline;
  for (let r = 0; r + 1 < rings.length; r++) {
    const last = rings[r + 1]! * 2 - 2;
    for (let i = rings[r]! * 2; i < last; i += 2) {
      const x = (points[i]! + dx) / width;
      const y = (points[i + 1]! + dy) / height;
      const ux = (points[i + 2]! + dx) / width - x;
      const uy = (points[i + 3]! + dy) / height - y;
      const steps = Math.ceil(2 * Math.max(Math.abs(ux), Math.abs(uy)));
      for (let k = 0; k < steps; k++) {
        // Sizes are powers of two: `&` closes the block, below 0 as well.
        const column = Math.floor(x + (ux * k) / steps) & (columns - 1);
        const row = Math.floor(y + (uy * k) / steps) & (rows - 1);
        const at = row * columns + column;
        ink[at] = ink[at]! | 2;
      }
    }
  }
}
