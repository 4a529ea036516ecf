import polygonClipping, { type MultiPolygon, type Ring as PcRing } from "polygon-clipping";
import { flatten, type Ring } from "../../../src/geometry/flatten.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { drawMotif } from "../../../src/motif/draw.ts";
import type { Motif, MotifUse } from "../../../src/motif/motif.ts";
import * as primitives from "../../../src/motif/primitives/index.ts";
import { createRandom } from "../../../src/seed/random.ts";

/** Every primitive by its short name. */
export const all = Object.entries(primitives);

/** A primitive's factory as a plugin host sees it: options unchecked. */
export type AnyFactory = (options?: Record<string, unknown>) => MotifUse;

/** The first drawing of a use. */
export const drawn = (use: MotifUse, seed = "measure"): Motif => drawMotif(use, createRandom(seed))[0]!;

/** One role's outline. */
export function shape(motif: Motif, role: string): Path {
  const found = motif.shapes.find((one) => one.role === role);
  if (!found) throw new Error(`${motif.name} has no ${role}`);
  return found.path;
}

/** Points of a path in mm, no farther than 1 µm apart from the curve. */
export function points(path: Path): [number, number][] {
  return flatten(path, 1).flatMap((ring) => pairs(ring));
}

const pairs = (ring: Ring): [number, number][] =>
  Array.from({ length: ring.length / 2 }, (_, i) => [ring[2 * i]! / 1000, ring[2 * i + 1]! / 1000]);

/** Width, height and farthest reach from the origin of a path, in mm. */
export function extent(path: Path): { width: number; height: number; reach: number; x: number; y: number } {
  const all = points(path);
  const xs = all.map((p) => p[0]);
  const ys = all.map((p) => p[1]);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const reach = Math.max(...all.map(([x, y]) => Math.hypot(x, y)));
  return { width: right - left, height: bottom - top, reach, x: (left + right) / 2, y: (top + bottom) / 2 };
}

/** A path as polygon-clipping reads it: contours combined by even-odd, as sound contours allow. */
export function polygons(path: Path, tolerance = 2): MultiPolygon {
  const rings = flatten(path, tolerance).map((ring) => pairs(ring) as PcRing);
  return polygonClipping.xor([rings[0]!], ...rings.slice(1).map((ring) => [ring] as [PcRing]));
}

/** Area of polygons in mm². */
export const areaOfPolygons = (all: MultiPolygon): number =>
  all.reduce(
    (sum, polygon) => sum + polygon.reduce((s, ring, i) => s + (i ? -1 : 1) * Math.abs(shoelace(ring)), 0),
    0,
  );

function shoelace(ring: PcRing): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i++) {
    const [a, b] = [ring[i]!, ring[(i + 1) % ring.length]!];
    sum += a[0] * b[1] - b[0] * a[1];
  }
  return sum / 2;
}

/** Sum of the areas of a path's contours where each crosses itself: 0 for sound ones. */
export function crossedArea(path: Path): number {
  return flatten(path, 4).reduce((sum, ring) => {
    const pc = pairs(ring) as PcRing;
    return sum + Math.abs(areaOfPolygons(polygonClipping.union([pc])) - Math.abs(shoelace(pc)));
  }, 0);
}

/** Length of all sides in mm. */
export const perimeter = (path: Path): number =>
  flatten(path, 2).reduce((sum, ring) => {
    const all = pairs(ring);
    return (
      sum +
      all.reduce(
        (s, p, i) =>
          s + Math.hypot(p[0] - all[(i + 1) % all.length]![0], p[1] - all[(i + 1) % all.length]![1]),
        0,
      )
    );
  }, 0);
