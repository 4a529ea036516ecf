import type { Ring } from "./flatten.ts";

/** Pairs of sides looked at before the count is given up: about a tenth of a second. */
const MOST_LOOKS = 5e7;

/**
 * How often the sides of rings cross each other; more than `most` is not counted further. Sides are swept from left
 * to right, and only those that overlap in x are compared. NaN when that alone took too many looks.
 */
export function countCrossings(rings: readonly Ring[], most: number): number {
  const sides = sidesOf(rings);
  const order = Array.from({ length: sides.length / 4 }, (_, k) => k);
  const left = (k: number): number => Math.min(sides[4 * k]!, sides[4 * k + 2]!);
  order.sort((p, q) => left(p) - left(q) || p - q);
  let active: number[] = [];
  let crossings = 0;
  let looks = MOST_LOOKS;
  for (const k of order) {
    const from = left(k);
    active = active.filter((j) => Math.max(sides[4 * j]!, sides[4 * j + 2]!) >= from);
    looks -= active.length;
    if (looks < 0) return Number.NaN;
    for (const j of active) if (cross(sides, j, k) && ++crossings > most) return crossings;
    active.push(k);
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
  const [ax, ay, bx, by] = [s[4 * j]!, s[4 * j + 1]!, s[4 * j + 2]!, s[4 * j + 3]!];
  const [cx, cy, dx, dy] = [s[4 * k]!, s[4 * k + 1]!, s[4 * k + 2]!, s[4 * k + 3]!];
  const side = (x: number, y: number, px: number, py: number, qx: number, qy: number): number =>
    (px - x) * (qy - y) - (py - y) * (qx - x);
  return (
    side(ax, ay, bx, by, cx, cy) * side(ax, ay, bx, by, dx, dy) < 0 &&
    side(cx, cy, dx, dy, ax, ay) * side(cx, cy, dx, dy, bx, by) < 0
  );
}
