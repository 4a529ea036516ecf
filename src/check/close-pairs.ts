import { distanceBetween, isCloser } from "../geometry/distance.ts";
import { imagesOf } from "../geometry/images.ts";
import {
  compose,
  identity,
  isWhole,
  type Matrix,
  movePath,
  placing,
  transformPath,
} from "../geometry/matrix.ts";
import { type Outline, outlineOfRings, silhouetteOf, transformOutline } from "../geometry/outline.ts";
import { fixesPoint, fixing } from "../geometry/symmetry/fixed.ts";
import type { Placement } from "../layout/layout.ts";
import type { Tile } from "../tile/tile.ts";
import { appearancesOf } from "./appearances.ts";

/** Two images of motifs that are nearer to each other than they should be. */
export interface ClosePair {
  readonly first: string;
  readonly second: string;
  /** Between the drawn outlines, holes filled (µm); 0 when they touch or overlap. */
  readonly distance: number;
  /** Both as they are drawn there. */
  readonly outlines: () => readonly [Outline, Outline];
}

/** How far the outlines of the first sieve, and those that are measured, may stray from the drawn curves (µm). */
const COARSE = 8;
const FINE = 0.5;
/** What rounding each point to whole µm may take of a distance (µm). */
const ROUNDED = 4;

/**
 * All pairs of motif images that touch or are nearer than `limit` µm, the nearest first. A pair recurs all over the
 * cloth, and is listed once, where one of the two stands as the layout placed it.
 *
 * A motif whose origin lies on a mirror line or a centre of rotation makes one figure with its images there: those are
 * no pairs.
 */
export function closePairs(tile: Tile, limit: number): ClosePair[] {
  const { placements } = tile;
  const images = imagesOf(tile.arrangement);
  const reach = limit + 2 * COARSE + ROUNDED;
  const outlines = coarseOutlines(tile);
  const stills = placements.map(({ motif, x, y, turn, scale, flip }) =>
    transformOutline(outlines[motif]!, placing(x, y, turn, scale, flip)),
  );
  const around = appearancesOf(stills, images, reach);
  const pairs: Found[] = [];
  stills.forEach((still, i) => {
    const here = placements[i]!;
    const about = [identity, ...fixing(images, here.x, here.y)];
    const own = new Map<number, Found[]>();
    around(still.box, ({ index, outline, dx, dy, matrix }) => {
      if (index < i || (index === i && fixesPoint(matrix, here.x, here.y))) return;
      if (!isCloser(still, outline, dx, dy, reach)) return;
      const there = placements[index]!;
      const both = () => [drawn(tile, here, identity), drawn(tile, there, matrix)] as const;
      const distance = distanceBetween(...both());
      if (distance > 0 && distance >= limit) return;
      const origins = alike(about, matrix, there, index === i);
      const pair = { first: here.id, second: there.id, distance, outlines: both, origins };
      const others = own.get(index) ?? [];
      own.set(index, others);
      const known = others.findIndex((other) => areAlike(other.origins[0]!, origins));
      if (known < 0) others.push(pair);
      else if (distance < others[known]!.distance) others[known] = pair;
    });
    for (const found of own.values()) pairs.push(...found);
  });
  return pairs.sort(
    (p, q) => p.distance - q.distance || order(p.first, q.first) || order(p.second, q.second),
  );
}

const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

type Point = readonly [x: number, y: number];

/** A pair, with where else the second motif could stand so that the pair is the same. */
interface Found extends ClosePair {
  readonly origins: readonly Point[];
}

/** Origins nearer than this are one (µm): they are rounded, and so are the images of centres of rotation. */
const ONE = 4;

/**
 * Where the second of a pair could stand just as well: what fixes the first maps the pair onto others like it, and a
 * motif stands to its image by g as it does to that by the inverse of g.
 */
function alike(about: readonly Matrix[], g: Matrix, { x, y }: Placement, self: boolean): Point[] {
  const [a, b, c, d, e, f] = g;
  const det = a * d - b * c;
  const points: Point[] = [[a * x + c * y + e, b * x + d * y + f]];
  if (self) points.push([(d * (x - e) - c * (y - f)) / det, (a * (y - f) - b * (x - e)) / det]);
  return points.flatMap(([u, v]) =>
    about.map(([p, q, r, s, t, w]): Point => [p * u + r * v + t, q * u + s * v + w]),
  );
}

const areAlike = ([x, y]: Point, origins: readonly Point[]): boolean =>
  origins.some(([u, v]) => Math.abs(u - x) < ONE && Math.abs(v - y) < ONE);

/** Every motif's outline, fine enough for the largest size that it has on the tile. */
function coarseOutlines({ motifs, placements }: Tile): Outline[] {
  const largest = motifs.map(() => 0.001);
  for (const { motif, scale } of placements) largest[motif] = Math.max(largest[motif]!, scale);
  return motifs.map(({ outline }, i) => outlineOfRings(silhouetteOf(outline, COARSE / largest[i]!)));
}

/** A motif's outline as it is drawn, rounded like the layers. */
function drawn({ motifs }: Tile, { motif, x, y, turn, scale, flip }: Placement, image: Matrix): Outline {
  const { outline } = motifs[motif]!;
  const path = isWhole(image)
    ? transformPath(movePath(transformPath(outline, placing(0, 0, turn, scale, flip)), x, y), image)
    : transformPath(outline, compose(placing(x, y, turn, scale, flip), image));
  return outlineOfRings(silhouetteOf(path, FINE));
}
