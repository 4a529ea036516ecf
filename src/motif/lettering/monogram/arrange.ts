import type { Ring } from "../../../geometry/flatten.ts";
import type { Box } from "../../../geometry/path.ts";

/** How initials are brought together. */
export type Arrangement = "interlaced" | "flanked";

/** Where an initial stands: its scale, and what its origin (on its baseline) is moved by. In heights of capitals. */
export interface Spot {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** Height of the side letters of a flanked initial, and the air beside it, in heights of capitals. */
const [SIDE, AIR] = [0.6, 0.1];

/**
 * Each letter over a part of the one before it. Two letters step down; of three, the middle one hangs below both,
 * which keep clear of each other. `overlap` is a share of the narrower letter's width, `drop` one of the height of
 * capitals.
 */
export function interlaced(boxes: readonly Box[], overlap: number, drop: number): Spot[] {
  const rights: number[] = [];
  return boxes.map((box, i) => {
    const width = box.maxX - box.minX;
    const before = boxes[i - 1];
    const wanted = before ? rights[i - 1]! - overlap * Math.min(width, before.maxX - before.minX) : 0;
    const left = Math.max(wanted, (rights[i - 2] ?? -Infinity) + AIR);
    rights.push(left + width);
    return { scale: 1, x: left - box.minX, y: i % 2 === 1 ? drop : 0 };
  });
}

/** A tall letter between two small ones, all about one middle line. Outlines are polygons in heights of capitals. */
export function flanked(outlines: readonly (readonly Ring[])[]): Spot[] {
  const [first, middle, last] = outlines as readonly [readonly Ring[], readonly Ring[], readonly Ring[]];
  const y = (SIDE - 1) / 2;
  // Only what stands beside the small letters keeps them off: they go above the tail of a Q.
  const [left, right] = reachWithin(middle, y - SIDE - AIR / 2, y + AIR / 2);
  return [
    { scale: SIDE, x: left - AIR - SIDE * reachWithin(first, -Infinity, Infinity)[1], y },
    { scale: 1, x: 0, y: 0 },
    { scale: SIDE, x: right + AIR - SIDE * reachWithin(last, -Infinity, Infinity)[0], y },
  ];
}

/** How far polygons reach to the left and to the right between two heights. */
function reachWithin(rings: readonly Ring[], top: number, bottom: number): readonly [number, number] {
  let [left, right] = [Infinity, -Infinity];
  for (const ring of rings)
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [x0, y0, x1, y1] = [ring[j]!, ring[j + 1]!, ring[i]!, ring[i + 1]!];
      if (Math.max(y0, y1) < top || Math.min(y0, y1) > bottom) continue;
      for (const y of [y0, y1]) {
        const share = y1 === y0 ? 0 : (Math.max(top, Math.min(bottom, y)) - y0) / (y1 - y0);
        const x = y1 === y0 && y === y1 ? x1 : x0 + (x1 - x0) * share;
        left = Math.min(left, x, y1 === y0 ? x0 : x);
        right = Math.max(right, x, y1 === y0 ? x0 : x);
      }
    }
  return [left, right];
}
