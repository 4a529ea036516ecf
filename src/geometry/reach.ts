/** A circle (µm). */
export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** Steps towards the farthest point: the radius is then within a hundredth of the least possible. */
const STEPS = 200;

/**
 * A circle around all points (x, y, x, y …), close to the smallest one. The centre is moved towards the farthest
 * point by a share that shrinks step by step (Badoiu and Clarkson 2003); the radius then reaches every point.
 */
export function enclosingCircle(points: ArrayLike<number>): Circle {
  if (points.length < 2) return { x: 0, y: 0, r: 0 };
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < points.length; i += 2) {
    minX = Math.min(minX, points[i]!);
    maxX = Math.max(maxX, points[i]!);
    minY = Math.min(minY, points[i + 1]!);
    maxY = Math.max(maxY, points[i + 1]!);
  }
  let x = (minX + maxX) / 2;
  let y = (minY + maxY) / 2;
  let best = { x, y, r: Infinity };
  for (let step = 1; step <= STEPS; step++) {
    const far = farthest(points, x, y);
    const dx = points[far]! - x;
    const dy = points[far + 1]! - y;
    const r = Math.sqrt(dx * dx + dy * dy);
    if (r < best.r) best = { x, y, r };
    x += dx / (step + 9);
    y += dy / (step + 9);
  }
  return best;
}

function farthest(points: ArrayLike<number>, x: number, y: number): number {
  let far = 0;
  let most = -1;
  for (let i = 0; i < points.length; i += 2) {
    const dx = points[i]! - x;
    const dy = points[i + 1]! - y;
    const d = dx * dx + dy * dy;
    if (d > most) {
      most = d;
      far = i;
    }
  }
  return far;
}
