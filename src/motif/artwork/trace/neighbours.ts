import type { Regions } from "./regions.ts";

/** Which regions share a side: for each its neighbours, and whether it reaches the picture's rim. */
export interface Neighbours {
  readonly of: readonly ReadonlySet<number>[];
  readonly atRim: readonly boolean[];
}

export function neighboursOf(regions: Regions, width: number): Neighbours {
  const { of: region, count } = regions;
  const of = Array.from({ length: count }, () => new Set<number>());
  const atRim = new Array<boolean>(count).fill(false);
  const height = region.length / width;
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) {
      const own = region[i]!;
      if (x === 0 || y === 0 || x === width - 1 || y === height - 1) atRim[own] = true;
      for (const other of [x + 1 < width ? region[i + 1]! : own, y + 1 < height ? region[i + width]! : own])
        if (other !== own) {
          of[own]!.add(other);
          of[other]!.add(own);
        }
    }
  return { of, atRim };
}

/**
 * Regions of higher ranks that lie wholly within `rank`, alone or together: it goes through below them, as a painter
 * lays the body first and the details on it.
 */
export function enclosedIn(rank: number, regions: Regions, { of, atRim }: Neighbours): Uint8Array {
  const enclosed = new Uint8Array(regions.count);
  const seen = new Uint8Array(regions.count);
  for (let first = 0; first < regions.count; first++) {
    if (seen[first] || regions.labels[first]! <= rank) continue;
    const group = [first];
    let alone = true;
    seen[first] = 1;
    for (let at = 0; at < group.length; at++) {
      const region = group[at]!;
      if (atRim[region]) alone = false;
      for (const other of of[region]!) {
        const label = regions.labels[other]!;
        if (label < rank) alone = false;
        if (label <= rank || seen[other]) continue;
        seen[other] = 1;
        group.push(other);
      }
    }
    if (alone) for (const region of group) enclosed[region] = 1;
  }
  return enclosed;
}
