import { intersectRings } from "../../geometry/clip.ts";
import { isCloser } from "../../geometry/distance.ts";
import type { Ring } from "../../geometry/flatten.ts";
import { type Bounds, type Images, transformBounds } from "../../geometry/images.ts";
import { placing } from "../../geometry/matrix.ts";
import { type Outline, outlineOfRings, silhouetteOf, transformOutline } from "../../geometry/outline.ts";
import type { Standing } from "../layout.ts";
import { TOLERANCE } from "./body.ts";
import { bucketsOver } from "./buckets.ts";
import type { Moved } from "./distance-map.ts";

/** Something that stands on the board and is no piece of it: never moved, counted or taken up. */
interface Obstacle extends Moved {
  /** Distance that is kept from it (µm), whatever the gap; undefined: the gap. */
  readonly limit: number | undefined;
  /** Room (µm) that it wants on top of the gap. */
  readonly extra: number;
  /** The last search that met it. */
  seen: number;
}

/** Obstacles in buckets by place. */
export interface Obstacles {
  /**
   * Whether an outline keeps `gap`, and the larger of its `extra` room and theirs, from all motifs that stand, and the
   * edge from where it may not be.
   */
  readonly isClear: (outline: Outline, gap: number, extra: number) => boolean;
}

/** Most sides of one piece of forbidden ground. */
const MOST_SIDES = 16;

/**
 * Obstacles over `zone` (minX, minY, maxX, maxY in µm) in buckets of `bucket` µm: motifs that stand, and polygons
 * (nonzero) from which `limit` µm are kept.
 */
export function createObstacles(
  zone: Bounds,
  bucket: number,
  standing: readonly StandingCopy[],
  forbidden: readonly (readonly Ring[])[],
  limit: number,
): Obstacles {
  const [left, top] = [zone[0]!, zone[1]!];
  const { columns, count, column, row } = bucketsOver(zone, bucket);
  const buckets: Obstacle[][] = Array.from({ length: count }, () => []);
  let searches = 0;
  const put = (obstacle: Obstacle): void => {
    const { outline, dx, dy } = obstacle;
    const [minX, minY, maxX, maxY] = outline.box as unknown as [number, number, number, number];
    for (let j = row(minY + dy); j <= row(maxY + dy); j++)
      for (let i = column(minX + dx); i <= column(maxX + dx); i++) buckets[j * columns + i]!.push(obstacle);
  };
  for (const one of standing) put({ ...one, limit: undefined, seen: 0 });
  for (const rings of forbidden)
    cut(rings, [left, top, zone[2]!, zone[3]!], bucket / 2, (part) =>
      put({ outline: outlineOfRings(part), dx: 0, dy: 0, limit, extra: 0, seen: 0 }),
    );
  const walls = forbidden.length > 0 ? limit : 0;
  const widest = standing.reduce((most, { extra }) => Math.max(most, extra), 0);
  return {
    isClear(outline, gap, extra) {
      const stamp = ++searches;
      const reach = Math.max(standing.length > 0 ? gap + Math.max(extra, widest) : 0, walls);
      const { box } = outline;
      const toColumn = column(box[2]! + reach);
      const toRow = row(box[3]! + reach);
      for (let j = row(box[1]! - reach); j <= toRow; j++)
        for (let i = column(box[0]! - reach); i <= toColumn; i++)
          for (const obstacle of buckets[j * columns + i]!) {
            if (obstacle.seen === stamp) continue;
            obstacle.seen = stamp;
            const { dx, dy } = obstacle;
            const apart = obstacle.limit ?? gap + Math.max(extra, obstacle.extra);
            if (isCloser(outline, obstacle.outline, dx, dy, apart)) return false;
          }
      return true;
    },
  };
}

/** Cuts polygons into parts of few sides or of at most `least` µm: near one place, only few need looking at. */
function cut(
  rings: readonly Ring[],
  [left, top, right, bottom]: readonly [number, number, number, number],
  least: number,
  visit: (part: Ring[]) => void,
): void {
  const frame = Float64Array.from([left, top, right, top, right, bottom, left, bottom]);
  const part = intersectRings(rings, [frame]);
  const sides = part.reduce((sum, ring) => sum + ring.length / 2, 0);
  if (sides === 0) return;
  const [width, height] = [right - left, bottom - top];
  if (sides <= MOST_SIDES || Math.max(width, height) <= least) visit(part);
  else if (width > height) {
    const middle = Math.round(left + width / 2);
    cut(part, [left, top, middle, bottom], least, visit);
    cut(part, [middle, top, right, bottom], least, visit);
  } else {
    const middle = Math.round(top + height / 2);
    cut(part, [left, top, right, middle], least, visit);
    cut(part, [left, middle, right, bottom], least, visit);
  }
}

/** One appearance of a motif that stands. */
export interface StandingCopy extends Moved {
  /** Room (µm) that it wants on top of the gap. */
  readonly extra: number;
}

/** Every appearance of standing motifs that meets the zone; holes in them count as filled. */
export function standingCopies(standing: readonly Standing[], images: Images, zone: Bounds): StandingCopy[] {
  const copies: StandingCopy[] = [];
  for (const { motif, placement, extra = 0 } of standing) {
    const { x, y, turn, scale, flip } = placement;
    const bare = outlineOfRings(silhouetteOf(motif.outline, TOLERANCE / scale));
    const outline = transformOutline(bare, placing(x, y, turn, scale, flip));
    images.operations.forEach((operation, index) => {
      let shown: Outline | undefined = index === 0 ? outline : undefined;
      const box = index === 0 ? outline.box : transformBounds(outline.box, operation);
      images.between(box, zone, 0, (dx, dy) => {
        shown ??= transformOutline(outline, operation);
        copies.push({ outline: shown, dx, dy, extra });
      });
    });
  }
  return copies;
}
