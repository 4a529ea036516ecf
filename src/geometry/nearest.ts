import { boxGapSquared } from "./distance.ts";
import type { Outline } from "./outline.ts";

/** The nearest points of two outlines. */
export interface Nearest {
  /** Their distance (µm), `Infinity` when it is not below the limit. */
  distance: number;
  /** From the second outline's point to the first's: of length 0 where they touch or cross. */
  x: number;
  y: number;
}

/**
 * The nearest points of two outlines that neither cross nor contain each other, `b` moved by (dx, dy), if they are
 * nearer than `limit` µm. Of equally near points the first found.
 */
export function nearestPoints(a: Outline, b: Outline, dx: number, dy: number, limit: number): Nearest {
  const found: Nearest = { distance: Infinity, x: 0, y: 0 };
  let best = limit * limit;
  const points = (from: Outline, to: Outline, ox: number, oy: number, way: 1 | -1): void => {
    const p = from.points;
    const q = to.points;
    for (let i = 0; i < from.runs.length; i += 2) {
      if (boxGapSquared(from.boxes, i * 2, to.box, 0, ox, oy) >= best) continue;
      for (let j = 0; j < to.runs.length; j += 2) {
        if (boxGapSquared(from.boxes, i * 2, to.boxes, j * 2, ox, oy) >= best) continue;
        const lastOne = from.runs[i + 1]! * 2;
        const lastTwo = to.runs[j + 1]! * 2;
        for (let s = from.runs[i]! * 2; s <= lastOne; s += 2) {
          const px = p[s]! - ox;
          const py = p[s + 1]! - oy;
          for (let t = to.runs[j]! * 2; t < lastTwo; t += 2) {
            const ux = q[t + 2]! - q[t]!;
            const uy = q[t + 3]! - q[t + 1]!;
            const wx = px - q[t]!;
            const wy = py - q[t + 1]!;
            const length = ux * ux + uy * uy;
            const along = length > 0 ? Math.max(0, Math.min(1, (ux * wx + uy * wy) / length)) : 0;
            const nx = wx - along * ux;
            const ny = wy - along * uy;
            const squared = nx * nx + ny * ny;
            if (squared >= best) continue;
            best = squared;
            found.x = way * nx;
            found.y = way * ny;
            found.distance = Math.sqrt(squared);
          }
        }
      }
    }
  };
  points(a, b, dx, dy, 1);
  points(b, a, -dx, -dy, -1);
  return found;
}
