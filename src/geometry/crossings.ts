import type { Ring } from "./flatten.ts";

/** Pairs of sides looked at before the count is given up: about a tenth of a second. */
const MOST_LOOKS = 5e7;

/**
 * How often the sides of rings cross each other; more than `most` is not counted further. Sides are swept from left
 * to right, and only those that overlap in x are compared. NaN when that alone took too many looks.
 */
export function countCrossings(rings: readonly Ring[], most: number): number {
  const s = sidesOf(rings);
  const count = s.length / 4;
  const [left, right] = [new Float64Array(count), new Float64Array(count)];
  for (let k = 0; k < count; k++) {
    left[k] = Math.min(s[4 * k]!, s[4 * k + 2]!);
    right[k] = Math.max(s[4 * k]!, s[4 * k + 2]!);
  }
  const order = Uint32Array.from(left, (_, k) => k).sort((p, q) => left[p]! - left[q]! || p - q);
  const active = new Uint32Array(count);
  let [open, crossings, looks] = [0, 0, MOST_LOOKS];
  for (const k of order) {
    const from = left[k]!;
    const low = Math.min(s[4 * k + 1]!, s[4 * k + 3]!);
    const high = Math.max(s[4 * k + 1]!, s[4 * k + 3]!);
    let kept = 0;
    for (let i = 0; i < open; i++) {
      const j = active[i]!;
      if (right[j]! < from) continue;
      active[kept++] = j;
      const [y0, y1] = [s[4 * j + 1]!, s[4 * j + 3]!];
      if ((y0 < low && y1 < low) || (y0 > high && y1 > high)) continue;
      if (cross(s, j, k) && ++crossings > most) return crossings;
    }
    looks -= kept;
    if (looks < 0) return Number.NaN;
    active[kept] = k;
    open = kept + 1;
  }
  return crossings;
}

function sidesOf(rings: readonly Ring[]): Float64Array {
  const sides = new Float64Array(rings.reduce((sum, ring) => sum + ring.length, 0) * 2);
  let at = 0;
  for (const ring of rings)
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      sides[at++] = ring[j]!;
      sides[at++] = ring[j + 1]!;
      sides[at++] = ring[i]!;
      sides[at++] = ring[i + 1]!;
    }
  return sides;
}

/** Whether two sides cross, each well inside the other: joined ends do not count. */
function cross(s: Float64Array, j: number, k: number): boolean {
  const ax = s[4 * j]!;
  const ay = s[4 * j + 1]!;
  const ux = s[4 * j + 2]! - ax;
  const uy = s[4 * j + 3]! - ay;
  const cx = s[4 * k]!;
  const cy = s[4 * k + 1]!;
  const vx = s[4 * k + 2]! - cx;
  const vy = s[4 * k + 3]! - cy;
  const c = ux * (cy - ay) - uy * (cx - ax);
  const d = ux * (cy + vy - ay) - uy * (cx + vx - ax);
  if (!(c > 0 ? d < 0 : c < 0 && d > 0)) return false;
  const a = vx * (ay - cy) - vy * (ax - cx);
  const b = vx * (ay + uy - cy) - vy * (ax + ux - cx);
  return a > 0 ? b < 0 : a < 0 && b > 0;
}
