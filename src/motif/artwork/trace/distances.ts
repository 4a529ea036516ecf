import type { Regions } from "./regions.ts";
import type { Shares } from "./shares.ts";

/** Steps of the distance: a third of a pixel to the side, so that four reach nearly a corner. */
export const SIDE = 3;
const CORNER = 4;
/** A part of a picture, both ends included. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** How far each pixel of a frame is from the rank, in thirds of a pixel (chamfer distance), up to `most`. */
export function distances(
  { width, major }: Shares,
  regions: Regions,
  rank: number,
  enclosed: Uint8Array,
  frame: Frame,
  most: number,
): Uint16Array {
  const columns = frame.right - frame.left + 1;
  const rows = frame.bottom - frame.top + 1;
  const far = new Uint16Array(columns * rows).fill(most);
  for (let y = 0, k = 0; y < rows; y++)
    for (let x = 0, i = (frame.top + y) * width + frame.left; x < columns; x++, i++, k++)
      if (major[i] === rank || enclosed[regions.of[i]!]) far[k] = 0;
  const reach = (k: number, j: number, step: number): void => {
    const through = far[j]! + step;
    if (through < far[k]!) far[k] = through;
  };
  for (const way of [1, -1])
    for (let n = 0; n < far.length; n++) {
      const k = way === 1 ? n : far.length - 1 - n;
      if (far[k] === 0) continue;
      const x = k % columns;
      const before = way === 1 ? x > 0 : x < columns - 1;
      const after = way === 1 ? x < columns - 1 : x > 0;
      const row = k - way * columns;
      if (before) reach(k, k - way, SIDE);
      if (row < 0 || row >= far.length) continue;
      reach(k, row, SIDE);
      if (before) reach(k, row - way, CORNER);
      if (after) reach(k, row + way, CORNER);
    }
  return far;
}
