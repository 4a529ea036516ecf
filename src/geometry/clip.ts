import { Clipper, FillRule, type Path64, type Paths64 } from "clipper2-ts";
import { type Ring, ringArea } from "./flatten.ts";
import type { Path } from "./path.ts";
import { pointsOf, ringsOf } from "./points.ts";

/** Rings as the engine reads them, in whole µm. */
const toPaths64 = (rings: readonly Ring[]): Paths64 => rings.map(withoutSpikes);

/**
 * A ring's points without those where it turns straight back, which enclose nothing:
 * with level spikes (`… 10,0 8,0 20,0 …`) the engine was seen to lose whole corners.
 */
function withoutSpikes(ring: Ring): Path64 {
  const kept: Path64 = [];
  const spiked = (a: number, b: number, c: number): boolean => {
    const [p, q, r] = [kept[a]!, kept[b]!, kept[c]!];
    const ux = q.x - p.x;
    const uy = q.y - p.y;
    const vx = r.x - q.x;
    const vy = r.y - q.y;
    return ux * vy === uy * vx && ux * vx + uy * vy <= 0;
  };
  for (const point of pointsOf(ring)) {
    kept.push(point);
    for (let n = kept.length; n > 2 && spiked(n - 3, n - 2, n - 1); n--) kept.splice(n - 2, 1);
  }
  // The seam between the last point and the first is a corner like any other.
  for (let n = kept.length; ; n--) {
    if (n > 2 && spiked(n - 2, n - 1, 0)) kept.pop();
    else if (n > 2 && spiked(n - 1, 0, 1)) kept.shift();
    else return kept;
  }
}

/** Rings with every coordinate rounded to a whole µm. */
export const roundRings = (rings: readonly Ring[]): Ring[] =>
  rings.map((ring) => ring.map((v) => Math.round(v)));

/** Union of polygons, nonzero filling; outer rings come out positive, holes negative. */
export const uniteRings = (rings: readonly Ring[]): Ring[] =>
  ringsOf(Clipper.union(toPaths64(rings), FillRule.NonZero));

/** The same area as polygons filled even-odd, now for nonzero filling. */
export const evenOddRings = (rings: readonly Ring[]): Ring[] =>
  ringsOf(Clipper.union(toPaths64(rings), FillRule.EvenOdd));

/** `rings` without what `cut` covers. */
export const subtractRings = (rings: readonly Ring[], cut: readonly Ring[]): Ring[] =>
  ringsOf(Clipper.difference(toPaths64(rings), toPaths64(cut), FillRule.NonZero));

/** What both sets of polygons cover. */
export const intersectRings = (rings: readonly Ring[], other: readonly Ring[]): Ring[] =>
  ringsOf(Clipper.intersect(toPaths64(rings), toPaths64(other), FillRule.NonZero));

/** Sum of the signed areas of rings (µm²). */
export const ringsArea = (rings: readonly Ring[]): number =>
  rings.reduce((sum, ring) => sum + ringArea(ring), 0);

/** Length of all sides of rings (µm). */
export function ringsPerimeter(rings: readonly Ring[]): number {
  let sum = 0;
  for (const ring of rings)
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const dx = ring[i]! - ring[j]!;
      const dy = ring[i + 1]! - ring[j + 1]!;
      sum += Math.sqrt(dx * dx + dy * dy);
    }
  return sum;
}

/** Polygons as a path of straight sides. */
export function pathOfRings(rings: readonly Ring[]): Path {
  const points: number[] = [];
  const contours: number[] = [];
  for (const ring of rings) {
    const count = ring.length / 2;
    if (count < 3) continue;
    for (let i = 0; i < count; i++) {
      const [x, y] = [ring[2 * i]!, ring[2 * i + 1]!];
      const k = (i + 1) % count;
      points.push(x, y, x, y, ring[2 * k]!, ring[2 * k + 1]!);
    }
    contours.push(count);
  }
  return { points: Int32Array.from(points), contours };
}
