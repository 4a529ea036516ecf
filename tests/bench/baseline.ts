import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import { flatten } from "../../src/geometry/flatten.ts";
import { modulo } from "../../src/geometry/lattice.ts";
import { placing, transformPath } from "../../src/geometry/matrix.ts";
import { areaOf, boxOf, type Path } from "../../src/geometry/path.ts";
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

/**
 * What a user would write with a geometry library: darts, large to small, kinds in turn, each dart tested with JSTS
 * (`isWithinDistance` on flattened outlines) against neighbours from a bucket grid; a size ends when a kind has
 * missed `tries` times in a row. Straight repeat, any turn. Returns the number placed and the share covered.
 */
export function darts(
  paths: readonly Path[],
  scales: readonly number[],
  side: number,
  gap: number,
  tries: number,
  random: Random,
): { count: number; coverage: number; shapes: readonly Path[] } {
  const bucket = 20_000;
  const across = Math.ceil(side / bucket);
  const grid = new Map<number, { polygon: unknown; box: ReturnType<typeof boxOf> }[]>();
  const shapes: Path[] = [];
  let area = 0;
  let count = 0;
  const cellsOf = (box: ReturnType<typeof boxOf>, reach: number, visit: (key: number) => void): void => {
    for (let i = Math.floor((box.minX - reach) / bucket); i <= Math.floor((box.maxX + reach) / bucket); i++)
      for (let j = Math.floor((box.minY - reach) / bucket); j <= Math.floor((box.maxY + reach) / bucket); j++)
        visit((i + across) * 1000 + j + across);
  };
  const place = (path: Path, scale: number): boolean => {
    const x = random.below(side);
    const y = random.below(side);
    const shape = transformPath(path, placing(x, y, random.next(), scale));
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
        const copy = transformPath(path, placing(0, 0));
        copy.points.set(shape.points);
        for (let k = 0; k < copy.points.length; k += 2) {
          copy.points[k]! += dx;
          copy.points[k + 1]! += dy;
        }
        const entry = { polygon: toJsts(copy, 100), box: boxOf(copy) };
        cellsOf(entry.box, 0, (key) => {
          if (!grid.has(key)) grid.set(key, []);
          grid.get(key)!.push(entry);
        });
      }
    shapes.push(shape);
    area += areaOf(path) * scale * scale;
    count++;
    return true;
  };
  for (const scale of scales) {
    for (let kind = 0, open = true; open; kind = modulo(kind + 1, paths.length)) {
      let missed = 0;
      while (missed < tries && !place(paths[kind]!, scale)) missed++;
      open = missed < tries;
    }
  }
  return { count, coverage: area / (side * side), shapes };
}
