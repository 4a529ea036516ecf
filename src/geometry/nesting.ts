import { contains } from "./distance.ts";
import { type Ring, ringArea } from "./flatten.ts";
import { meetsItself } from "./meeting.ts";
import { outlineOfRings } from "./outline.ts";

/** Looks of rings at points before finding out is given up: some milliseconds. */
const MOST_LOOKS = 2e6;

/**
 * Where no side of any ring meets another, uniting is a matter of how the rings lie in each other: what to do with
 * each, 1 to keep it, -1 to run it backwards, 0 to leave it out, since it encloses no more than `least` (µm²) or what is
 * covered does not change at it. Undefined where sides meet, or finding out would take long.
 */
export function nestingOf(
  rings: readonly Ring[],
  rule: "nonzero" | "evenodd",
  least: number,
): readonly (1 | -1 | 0)[] | undefined {
  const areas = rings.map(ringArea);
  const large = rings.filter((_, i) => Math.abs(areas[i]!) > least);
  if (large.length === 0) return undefined;
  const outline = outlineOfRings(large);
  if (large.length * outline.points.length > MOST_LOOKS || meetsItself(outline)) return undefined;
  const singles = large.length > 1 ? large.map((ring) => outlineOfRings([ring])) : [];
  const senses = areas.filter((area) => Math.abs(area) > least).map((area) => (area > 0 ? 1 : -1));
  const covered = (winding: number): boolean =>
    rule === "nonzero" ? winding !== 0 : Math.abs(winding) % 2 === 1;
  const kept = large.map(([x, y], i): 1 | -1 | 0 => {
    let around = 0;
    for (const [j, other] of singles.entries()) if (i !== j && contains(other, x!, y!)) around += senses[j]!;
    const [outside, inside] = [covered(around), covered(around + senses[i]!)];
    if (outside === inside) return 0;
    return inside === senses[i]! > 0 ? 1 : -1;
  });
  let next = 0;
  return areas.map((area) => (Math.abs(area) > least ? kept[next++]! : 0));
}
