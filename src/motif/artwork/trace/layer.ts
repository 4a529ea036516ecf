import { distances, type Frame, SIDE } from "./distances.ts";
import type { Regions } from "./regions.ts";
import type { Shares } from "./shares.ts";

/** A part of the picture as a field: above 0 inside an area, below outside, its edge where it is 0. */
export interface Field {
  readonly width: number;
  readonly height: number;
  /** Where its first column and row are, in pixels; the middle of a pixel is at a half. */
  readonly x: number;
  readonly y: number;
  readonly values: Float32Array;
}

/** Up to here an area spreads along edges as well: the nearest pixel and its corners. */
const CLOSE = 5;

/**
 * Where a rank of the stack is, as a field: what it has of each pixel; all of what is `enclosed` in it; and, where
 * higher ranks lie at its side, `spread` pixels below them, so that nothing shines through between two inks. Paper
 * and lower ranks keep what is theirs.
 */
export function layerOf(
  shares: Shares,
  regions: Regions,
  rank: number,
  enclosed: Uint8Array,
  spread: number,
): Field | undefined {
  const { width, major, minor, part } = shares;
  const box = boxOf(shares, rank, Math.ceil(spread) + 5);
  if (!box) return undefined;
  const [columns, rows] = [box.right - box.left + 1, box.bottom - box.top + 1];
  const far = distances(shares, regions, rank, enclosed, box, Math.ceil((spread + 1) * SIDE));
  const values = new Float32Array(columns * rows);
  const lowerBeside = (x: number, y: number): boolean => {
    for (let row = Math.max(0, y - 1); row <= Math.min(shares.height - 1, y + 1); row++)
      for (let i = row * width + Math.max(0, x - 1); i <= row * width + Math.min(width - 1, x + 1); i++)
        if (major[i]! < rank || (minor[i]! < rank && part[i]! > 12)) return true;
    return false;
  };
  for (let y = box.top, k = 0; y <= box.bottom; y++)
    for (let x = box.left; x <= box.right; x++, k++) {
      const i = y * width + x;
      const [more, less, share] = [major[i]!, minor[i]!, part[i]!];
      if (more < rank && (less < rank || share === 0)) {
        values[k] = -255;
        continue;
      }
      let below = 0;
      if (more > rank || less > rank) {
        const thirds = far[k]!;
        if (more > rank && enclosed[regions.of[i]!]) below = 1;
        else if (thirds <= CLOSE || !lowerBeside(x, y))
          below = Math.max(0, Math.min(1, spread + 0.5 - thirds / SIDE));
      }
      const weigh = (label: number, own: number): number =>
        label === rank ? own : label > rank ? own * below : 0;
      values[k] = 2 * (weigh(more, 255 - share) + weigh(less, share)) - 255;
    }
  return { width: columns, height: rows, x: box.left, y: box.top, values };
}

/** The box of all pixels that a rank has a part of, and `margin` around it. */
function boxOf(
  { width, height, major, minor, part }: Shares,
  rank: number,
  margin: number,
): Frame | undefined {
  let [left, top, right, bottom] = [width, height, -1, -1];
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) {
      if (major[i] !== rank && (minor[i] !== rank || part[i] === 0)) continue;
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      bottom = y;
    }
  if (right < 0) return undefined;
  return {
    left: Math.max(0, left - margin),
    top: Math.max(0, top - margin),
    right: Math.min(width - 1, right + margin),
    bottom: Math.min(height - 1, bottom + margin),
  };
}
