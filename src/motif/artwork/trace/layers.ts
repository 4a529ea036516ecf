import type { Ring } from "../../../geometry/flatten.ts";
import type { Analysis } from "./analyse.ts";
import { contoursOf } from "./contours.ts";
import type { Point } from "./fit/point.ts";
import type { InkGroup } from "./ink-roles.ts";
import { layerOf } from "./layer.ts";
import { enclosedIn, neighboursOf } from "./neighbours.ts";
import { regionsOf } from "./regions.ts";
import type { Shares } from "./shares.ts";
import { softened } from "./soften.ts";

/** The edges of one group of inks, in pixels. */
export interface Layer {
  readonly rings: readonly Ring[];
  /** Whether a point of its edges lies below other groups, out of sight. */
  readonly isHidden: (p: Point) => boolean;
}

/** The edges of every group of inks; those below spread under those above by `spread` pixels. */
export function layersOf({ shares, rough }: Analysis, groups: readonly InkGroup[], spread: number): Layer[] {
  const ranked = rankedShares(shares, groups);
  const regions = regionsOf(ranked.major, ranked.width, () => false);
  const neighbours = neighboursOf(regions, ranked.width);
  return groups.map((_, i) => {
    const field = layerOf(ranked, regions, i + 1, enclosedIn(i + 1, regions, neighbours), spread);
    const rings = field ? contoursOf(softened(field, rough)) : [];
    return { rings, isHidden: (p) => isBelow(ranked, i + 1, p) };
  });
}

/** Whether a pixel and all around it belong to higher ranks. */
function isBelow({ width, height, major }: Shares, rank: number, [px, py]: Point): boolean {
  const [x, y] = [Math.floor(px), Math.floor(py)];
  if (x < 1 || y < 1 || x > width - 2 || y > height - 2) return false;
  for (let row = y - 1; row <= y + 1; row++)
    for (let i = row * width + x - 1; i <= row * width + x + 1; i++) if (major[i]! <= rank) return false;
  return true;
}

/** Shares by rank in the stack: 0 for what is left out, then 1 for the lowest group. */
function rankedShares(shares: Shares, groups: readonly InkGroup[]): Shares {
  const ranks = new Uint8Array(256);
  groups.forEach(({ inks }, i) => {
    for (const { label } of inks) ranks[label] = i + 1;
  });
  const byRank = (labels: Uint8Array): Uint8Array => labels.map((label) => ranks[label]!);
  return { ...shares, major: byRank(shares.major), minor: byRank(shares.minor) };
}
