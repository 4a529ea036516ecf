import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import { flatten } from "../../src/geometry/flatten.ts";
import { modulo } from "../../src/geometry/lattice.ts";
import { placing, transformPath } from "../../src/geometry/matrix.ts";
import { boxOf, type Path } from "../../src/geometry/path.ts";
import type { Random } from "../../src/seed/random.ts";

const factory = new GeometryFactory();

/** The first ring of a path as a polygon of JSTS, in µm. */
export function toJsts(path: Path, tolerance: number): unknown {
  const ring = flatten(path, tolerance)[0]!;
  const at = (i: number): unknown => new Coordinate(ring[2 * i], ring[2 * i + 1]);
  const coordinates = Array.from({ length: ring.length / 2 }, (_, i) => at(i));
  return factory.createPolygon(factory.createLinearRing([...coordinates, at(0)]));
}

export const jstsDistance = (a: unknown, b: unknown): number => DistanceOp.distance(a, b);

/** What the darts left standing: the index of its path, µm, turns, a factor. */
export interface Stuck {
  readonly motif: number;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
  readonly scale: number;
}

/** A square that repeats straight, on which darts are thrown; each dart is tested with JSTS against its neighbours. */
function board(paths: readonly Path[], side: number, gap: number, random: Random) {
  const bucket = 20_000;
  const across = Math.ceil(side / bucket);
  const grid = new Map<number, { polygon: unknown; box: ReturnType<typeof boxOf> }[]>();
  const stuck: Stuck[] = [];
  const cellsOf = (box: ReturnType<typeof boxOf>, reach: number, visit: (key: number) => void): void => {
    for (let i = Math.floor((box.minX - reach) / bucket); i <= Math.floor((box.maxX + reach) / bucket); i++)
      for (let j = Math.floor((box.minY - reach) / bucket); j <= Math.floor((box.maxY + reach) / bucket); j++)
        visit((i + across) * 1000 + j + across);
  };
  const throwOne = (motif: number, scale: number): boolean => {
    const x = random.below(side);
    const y = random.below(side);
    const turn = random.next();
    const shape = transformPath(paths[motif]!, placing(x, y, turn, scale));
    const box = boxOf(shape);
    const polygon = toJsts(shape, 100);
    let free = true;
    const seen = new Set<unknown>();
    cellsOf(box, gap, (key) => {
      if (!free) return;
      for (const other of grid.get(key) ?? []) {
        if (seen.has(other)) continue;
        seen.add(other);
        const o = other.box;
        if (o.minX > box.maxX + gap || o.maxX < box.minX - gap) continue;
        if (o.minY > box.maxY + gap || o.maxY < box.minY - gap) continue;
        if (DistanceOp.isWithinDistance(polygon, other.polygon, gap)) free = false;
      }
    });
    if (!free) return false;
    for (let dx = -side; dx <= side; dx += side)
      for (let dy = -side; dy <= side; dy += side) {
        const copy = transformPath(shape, placing(dx, dy));
        const entry = { polygon: toJsts(copy, 100), box: boxOf(copy) };
        cellsOf(entry.box, 0, (key) => {
          if (!grid.has(key)) grid.set(key, []);
          grid.get(key)!.push(entry);
        });
      }
    stuck.push({ motif, x, y, turn, scale });
    return true;
  };
  return { stuck, throwOne };
}

/**
 * What a user would write with a geometry library: darts, large to small, kinds in turn, each dart tested with JSTS
 * (`isWithinDistance` on flattened outlines) against neighbours from a bucket grid; a size ends when a kind has
 * missed `tries` times in a row. Straight repeat, any turn.
 */
export function darts(
  paths: readonly Path[],
  scales: readonly number[],
  side: number,
  gap: number,
  tries: number,
  random: Random,
): Stuck[] {
  const { stuck, throwOne } = board(paths, side, gap, random);
  for (const scale of scales) {
    for (let kind = 0, open = true; open; kind = modulo(kind + 1, paths.length)) {
      let missed = 0;
      while (missed < tries && !throwOne(kind, scale)) missed++;
      open = missed < tries;
    }
  }
  return stuck;
}

/** A fixed list, large to small, each thrown until it sticks. */
export function dartsOfList(
  paths: readonly Path[],
  list: readonly { readonly motif: number; readonly scale: number }[],
  side: number,
  gap: number,
  random: Random,
): Stuck[] {
  const { stuck, throwOne } = board(paths, side, gap, random);
  for (const { motif, scale } of [...list].sort((a, b) => b.scale - a.scale)) while (!throwOne(motif, scale));
  return stuck;
}
