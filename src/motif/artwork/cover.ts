import { ringsArea, subtractRings } from "../../geometry/clip.ts";
import { flatten, type Ring } from "../../geometry/flatten.ts";
import { lyingOf } from "../../geometry/lying.ts";
import { outlineOfRings } from "../../geometry/outline.ts";
import type { Path } from "../../geometry/path.ts";

/** How finely outlines are flattened to see whether others hide them (µm). */
const TOLERANCE = 5;
/** A sheet shows when more than this of it does (µm²). */
const DUST = 100;
/** Looks at sides of outlines before the rest is kept unseen: about a quarter of a second. */
const MOST_LOOKS = 2e7;

/** Which of some united paths are wholly hidden by those after them: first to last is back to front. */
export function hiddenOf(paths: readonly Path[]): ReadonlySet<number> {
  const hidden = new Set<number>();
  const rings: Ring[][] = paths.map((path) => flatten(path, TOLERANCE));
  const outlines = rings.map(outlineOfRings);
  let looks = 0;
  for (let i = paths.length - 2; i >= 0 && looks < MOST_LOOKS; i--) {
    const above: number[] = [];
    for (let j = i + 1; j < paths.length && !hidden.has(i); j++) {
      const lying = hidden.has(j) ? "apart" : lyingOf(outlines[i]!, outlines[j]!);
      if (lying === "within") hidden.add(i);
      // What lies amidst a path or apart from it leaves its border to be seen.
      else if (lying === "open") above.push(j);
    }
    if (above.length === 0 || hidden.has(i)) continue;
    // Most paths show at one of their own points, which is quickly seen; the rest is weighed.
    const isCovered = (x: number, y: number): boolean =>
      above.some((j) => {
        const { box } = outlines[j]!;
        if (x < box[0]! - 1 || y < box[1]! - 1 || x > box[2]! + 1 || y > box[3]! + 1) return false;
        looks += rings[j]!.reduce((sum, ring) => sum + ring.length / 2, 0);
        return covers(rings[j]!, x, y);
      });
    if (!rings[i]!.every((ring) => everyPoint(ring, isCovered))) continue;
    const left = subtractRings(
      rings[i]!,
      above.flatMap((j) => rings[j]!),
    );
    if (ringsArea(left) <= DUST) hidden.add(i);
  }
  return hidden;
}

function everyPoint(ring: Ring, holds: (x: number, y: number) => boolean): boolean {
  for (let i = 0; i < ring.length; i += 2) if (!holds(ring[i]!, ring[i + 1]!)) return false;
  return true;
}

/** How near the border a point may lie and count as covered (µm). */
const NEAR = 3;

/** Whether united rings cover a point, or pass close to it. */
function covers(rings: readonly Ring[], x: number, y: number): boolean {
  let inside = false;
  for (const ring of rings)
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [ax, ay, bx, by] = [ring[j]!, ring[j + 1]!, ring[i]!, ring[i + 1]!];
      if (ay <= y !== by <= y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
      if (isNear(ax, ay, bx, by, x, y)) return true;
    }
  return inside;
}

function isNear(ax: number, ay: number, bx: number, by: number, x: number, y: number): boolean {
  if (x < Math.min(ax, bx) - NEAR || x > Math.max(ax, bx) + NEAR) return false;
  if (y < Math.min(ay, by) - NEAR || y > Math.max(ay, by) + NEAR) return false;
  const [dx, dy] = [bx - ax, by - ay];
  const long = dx * dx + dy * dy;
  const off = dx * (y - ay) - dy * (x - ax);
  return long === 0 || off * off <= NEAR * NEAR * long;
}
