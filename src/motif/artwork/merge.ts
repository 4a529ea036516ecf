import { differenceCiede2000, modeLab65, modeLrgb, modeRgb, modeXyz65, useMode } from "culori/fn";

/**
 * How different two colours look: ΔE00 (CIEDE2000, CIE 142-2001; Sharma, Wu and Dalal 2005 for the formula), under
 * D65. About 1 is just seen side by side, 8 is a shade of the same colour. Rounded to 1e-6, so that every engine
 * decides alike.
 */
export function colorDistance(): (one: string, other: string) => number {
  for (const mode of [modeRgb, modeLrgb, modeXyz65, modeLab65])
    useMode(mode as Parameters<typeof useMode>[0]);
  const difference = differenceCiede2000();
  return (one, other) => Math.round(difference(one, other) * 1e6) / 1e6;
}

/** A colour of a drawing and how much it paints. */
export interface Inked {
  readonly fill: string;
  readonly area: number;
}

/**
 * Each fill → the fill that stands for it: the largest within `apart` (ΔE00) of it, in order of area, so that no
 * colour ends farther than that from what stands for it. `leaders` stand for themselves whatever their area.
 */
export function mergeFills(
  fills: readonly Inked[],
  apart: number,
  leaders: readonly string[] = [],
): ReadonlyMap<string, string> {
  const merged = new Map<string, string>(leaders.map((fill) => [fill, fill]));
  if (!(apart > 0)) return new Map([...merged, ...fills.map(({ fill }) => [fill, fill] as const)]);
  const difference = colorDistance();
  const standing = [...leaders];
  const sorted = [...fills].sort((p, q) => q.area - p.area || (p.fill < q.fill ? -1 : 1));
  for (const { fill } of sorted) {
    if (merged.has(fill)) continue;
    let best = { leader: fill, off: Infinity };
    for (const leader of standing) {
      const off = difference(fill, leader);
      if (off <= apart && off < best.off) best = { leader, off };
    }
    if (best.leader === fill) standing.push(fill);
    merged.set(fill, best.leader);
  }
  return merged;
}
