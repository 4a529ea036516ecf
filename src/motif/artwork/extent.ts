import type { Box } from "../../geometry/path.ts";
import type { Runs } from "../../geometry/sketch.ts";

/** The smallest upright box around the curves themselves, not their controls; empty when nothing is drawn. */
export function extentOf(outlines: readonly Runs[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const outline of outlines)
    for (const { points: p } of outline) {
      for (let i = 0; i + 7 < p.length; i += 6) {
        for (const x of extremes(p[i]!, p[i + 2]!, p[i + 4]!, p[i + 6]!)) {
          minX = Math.min(minX, x);
          maxX = Math.max(maxX, x);
        }
        for (const y of extremes(p[i + 1]!, p[i + 3]!, p[i + 5]!, p[i + 7]!)) {
          minY = Math.min(minY, y);
          maxY = Math.max(maxY, y);
        }
      }
    }
  return { minX, minY, maxX, maxY };
}

/** Both ends of one coordinate of a cubic, and its values where its derivative is zero. */
function extremes(p0: number, p1: number, p2: number, p3: number): number[] {
  const found = [p0, p3];
  const inside = (v: number): boolean => v >= Math.min(p0, p3) && v <= Math.max(p0, p3);
  if (inside(p1) && inside(p2)) return found;
  const a = p3 - 3 * p2 + 3 * p1 - p0;
  const b = 2 * (p2 - 2 * p1 + p0);
  const c = p1 - p0;
  for (const t of roots(a, b, c)) {
    if (!(t > 0 && t < 1)) continue;
    const s = 1 - t;
    found.push(s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3);
  }
  return found;
}

/** Roots of a t² + b t + c, in the form that does not cancel. */
function roots(a: number, b: number, c: number): number[] {
  const under = b * b - 4 * a * c;
  if (under < 0) return [];
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(under)) / 2;
  return [q / a, c / q];
}
