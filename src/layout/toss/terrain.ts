import { type Bounds, imagesOf } from "../../geometry/images.ts";
import type { Arrangement } from "../../geometry/lattice.ts";
import { outlineOfRings } from "../../geometry/outline.ts";
import type { Standing } from "../layout.ts";
import { SLACK } from "./body.ts";
import { type Confines, forbiddenRings } from "./confines.ts";
import { distanceMap, type Grid } from "./distance-map.ts";
import { createObstacles, type Obstacles, type StandingCopy, standingCopies } from "./obstacles.ts";

/** What lies on the ground before the first motif of a toss does, and where it may not go. */
export interface Terrain {
  /** Obstacles over a zone and distances over a grid within it; made once for all stages that fit. */
  readonly over: (zone: Float64Array, grid: Grid, bucket: number) => Ground;
}

/** See {@link Terrain}. */
export interface Ground {
  readonly obstacles: Obstacles;
  /** Distances to the nearest of the motifs that stand, and of those that want more than the gap, with the least that they want. */
  readonly standing: readonly { readonly distances: Float32Array; readonly extra: number }[];
  /** Distance to the nearest place where motifs may not be, less what is kept from it. */
  readonly free: Float32Array | undefined;
}

/** How far forbidden ground, which is cut up for the search and rounded at every cut, may stray from what is asked (µm). */
const CUT = 5;

/** How far drawn outlines keep from forbidden ground (µm), with what flattening and rounding may take of it. */
export const edgeOf = ({ edge = 0 }: Confines): number => Math.round(edge * 1000) + SLACK;

/** The terrain of a toss; undefined when the ground is bare. */
export function terrainOf(
  arrangement: Arrangement,
  standing: readonly Standing[],
  confines: Confines,
): Terrain | undefined {
  if (standing.length === 0 && confines.inside === undefined && confines.outside === undefined)
    return undefined;
  const images = imagesOf(arrangement);
  const edge = edgeOf(confines);
  const widest = standing.reduce((most, { extra = 0 }) => Math.max(most, extra), 0);
  const margin = Math.max(edge, widest);
  let known:
    | {
        readonly zone: Float64Array;
        readonly grid: Grid;
        readonly ground: Ground;
      }
    | undefined;
  return {
    over(zone, grid, bucket) {
      const wide = zone.map((v, i) => (i < 2 ? v - margin : v + margin));
      if (known && holds(known.zone, wide) && sameGrid(known.grid, grid)) return known.ground;
      const copies = standingCopies(standing, images, wide);
      const forbidden = forbiddenRings(confines, arrangement, wide);
      const walls = forbidden.map((rings) => ({ outline: outlineOfRings(rings), dx: 0, dy: 0 }));
      const ground = {
        obstacles: createObstacles(wide, bucket, copies, forbidden, edge + CUT),
        standing: standingDistances(grid, copies),
        free: walls.length > 0 ? distanceMap(grid, walls).map((d) => d - edge) : undefined,
      };
      known = { zone: wide, grid, ground };
      return ground;
    },
  };
}

/**
 * See {@link Ground.standing}. The least is taken off for all that want more: the map is a sieve that turns down nothing
 * that fits, and the exact test knows each one's own.
 */
function standingDistances(grid: Grid, copies: readonly StandingCopy[]): Ground["standing"] {
  if (copies.length === 0) return [];
  const all = { distances: distanceMap(grid, copies), extra: 0 };
  const aloof = copies.filter(({ extra }) => extra > 0);
  if (aloof.length === 0) return [all];
  const extra = aloof.reduce((least, copy) => Math.min(least, copy.extra), Infinity);
  if (aloof.length === copies.length) return [{ ...all, extra }];
  return [all, { distances: distanceMap(grid, aloof), extra }];
}

const holds = (outer: Bounds, inner: Bounds): boolean =>
  outer[0]! <= inner[0]! && outer[1]! <= inner[1]! && outer[2]! >= inner[2]! && outer[3]! >= inner[3]!;

const sameGrid = (p: Grid, q: Grid): boolean =>
  p.cell === q.cell && p.left === q.left && p.top === q.top && p.columns === q.columns && p.rows === q.rows;
