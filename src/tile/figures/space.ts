import { contains, pointSideSquared } from "../../geometry/distance.ts";
import type { Outline } from "../../geometry/outline.ts";
import { copiesNear, type Scene } from "./scene.ts";

/** Distance (µm) of a point from the nearest ink, or `limit` when that is less; 0 in ink. Exact on the scene's outlines. */
export function roomAt(scene: Scene, x: number, y: number, limit: number): number {
  let best = limit * limit;
  copiesNear(scene, [x, y, x, y], limit, ({ outline }, dx, dy) => {
    best = Math.min(best, squaredTo(outline, x - dx, y - dy, best));
  });
  return Math.sqrt(best);
}

/** Squared distance of a point from a filled outline, or `cut` when that is less. */
function squaredTo(outline: Outline, x: number, y: number, cut: number): number {
  const { points, runs, boxes, box } = outline;
  if (awaySquared(box, 0, x, y) >= cut) return cut;
  if (contains(outline, x, y)) return 0;
  let best = cut;
  for (let r = 0; r < runs.length; r += 2) {
    if (awaySquared(boxes, r * 2, x, y) >= best) continue;
    for (let i = runs[r]! * 2; i < runs[r + 1]! * 2; i += 2) {
      const squared = pointSideSquared(x, y, points[i]!, points[i + 1]!, points[i + 2]!, points[i + 3]!);
      if (squared < best) best = squared;
    }
  }
  return best;
}

function awaySquared(box: Float64Array, at: number, x: number, y: number): number {
  const dx = Math.max(box[at]! - x, x - box[at + 2]!, 0);
  const dy = Math.max(box[at + 1]! - y, y - box[at + 3]!, 0);
  return dx * dx + dy * dy;
}
