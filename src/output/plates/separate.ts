import { intersectRings, pathOfRings, subtractRings } from "../../geometry/clip.ts";
import { flatten, type Ring } from "../../geometry/flatten.ts";
import { movePath, reversePath } from "../../geometry/matrix.ts";
import { type Box, boxOf, joinPaths, type Path } from "../../geometry/path.ts";
import { rebuildCurves } from "../../geometry/rebuild.ts";
import type { Tile } from "../../tile/tile.ts";
import { movesInto } from "../copies.ts";
import { boxAround, boxRing, grownBox } from "./box-ring.ts";
import { type ClusterPlates, clusterPlates } from "./cluster-plates.ts";
import { type Cluster, clustersOf, FINENESS, type Member, TOUCHING } from "./clusters.ts";
import type { SeparationPlan } from "./plan.ts";

/** What is taken in around a sheet, so that nothing that goes on for ever ends at its edge (µm). */
const ROOM = 1000;

/** What of a plan decides shapes. */
export type SeparatingPlan = Omit<SeparationPlan, "marks">;

/**
 * What each role prints on a sheet (the trim and its bleed), the ground first, as paths that are clipped to it; within each
 * nothing overlaps. Béziers are kept where an edge of the drawing is kept. It stops now and then with the share that is
 * done, so that callers may wait there, or give up.
 */
export function* separate(tile: Tile, plan: SeparatingPlan): Generator<number, Path[]> {
  const { block, layers } = tile;
  const { size, bleed, trap } = plan;
  const sheet = grownBox({ minX: 0, minY: 0, maxX: size.width, maxY: size.height }, bleed);
  const roles = layers.map(({ role }) => role);
  const plates: Path[][] = ["ground", ...roles].map(() => []);
  const crossing: ClusterPlates[] = [];
  const clusters = clustersOf(layers, block, trap + TOUCHING);
  for (const [i, cluster] of clusters.entries()) {
    if (i % 32 === 0) yield i / clusters.length;
    const print = printOf(
      cluster.endless ? endlessIn(cluster, tile, grownBox(sheet, trap + ROOM)) : cluster.members,
      roles,
      plan,
    );
    const box = boxAround([...print.printed.flat(), ...print.kept], 0);
    const whole = cluster.endless ? undefined : pathsOf(print);
    const rows = cluster.endless ? [0] : movesInto(box.minY, box.maxY, block.height, sheet.minY, sheet.maxY);
    const columns = cluster.endless
      ? [0]
      : movesInto(box.minX, box.maxX, block.width, sheet.minX, sheet.maxX);
    for (const dy of rows)
      for (const dx of columns)
        if (whole && isWithin(box, dx, dy, sheet))
          whole.forEach((path, plate) => {
            plates[plate]!.push(movePath(path, dx, dy));
          });
        else {
          const there = moved(print, dx, dy);
          crossing.push(there);
          there.printed.forEach((rings, layer) => {
            if (rings.length > 0)
              plates[layer + 1]!.push(again(there.curves, intersectRings(rings, [boxRing(sheet)])));
          });
        }
  }
  yield 1;
  const cut = crossing.flatMap(({ kept }) => [...kept]);
  const curves = joinPaths(crossing.map((print) => print.curves));
  plates[0]!.unshift(again(curves, subtractRings([boxRing(sheet)], cut)));
  return plates.map(joinPaths);
}

function printOf(members: readonly Member[], roles: readonly string[], plan: SeparatingPlan): ClusterPlates {
  const contours = members.map(({ contour, x, y }) => movePath(contour, x, y));
  const drawn: Ring[][] = roles.map(() => []);
  contours.forEach((contour, i) => {
    drawn[members[i]!.layer]!.push(...flatten(contour, FINENESS));
  });
  return clusterPlates(drawn, joinPaths(contours), roles, plan);
}

/** Polygons as Béziers again, wherever they run along the drawing's own. */
const again = (curves: Path, rings: readonly Ring[]): Path =>
  curves.contours.length === 0 ? pathOfRings(rings) : rebuildCurves(curves, FINENESS, rings);

/** What a cluster adds to each plate: the ground's is a hole. */
const pathsOf = ({ curves, printed, kept }: ClusterPlates): Path[] => [
  reversePath(again(curves, kept)),
  ...printed.map((rings) => again(curves, rings)),
];

function moved({ printed, kept, curves }: ClusterPlates, dx: number, dy: number): ClusterPlates {
  const all = (rings: readonly Ring[]): Ring[] =>
    rings.map((ring) => ring.map((value, i) => value + (i % 2 === 0 ? dx : dy)));
  return { printed: printed.map(all), kept: all(kept), curves: movePath(curves, dx, dy) };
}

/** All copies of a cluster's contours that reach into a window. */
function endlessIn({ members }: Cluster, { block }: Tile, window: Box): Member[] {
  return members.flatMap((member) => {
    const box = boxOf(movePath(member.contour, member.x, member.y));
    const rows = movesInto(box.minY, box.maxY, block.height, window.minY, window.maxY);
    const columns = movesInto(box.minX, box.maxX, block.width, window.minX, window.maxX);
    return rows.flatMap((dy) => columns.map((dx) => ({ ...member, x: member.x + dx, y: member.y + dy })));
  });
}

const isWithin = (box: Box, dx: number, dy: number, sheet: Box): boolean =>
  box.minX + dx >= sheet.minX &&
  box.maxX + dx <= sheet.maxX &&
  box.minY + dy >= sheet.minY &&
  box.maxY + dy <= sheet.maxY;
