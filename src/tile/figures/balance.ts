import { flatten, type Ring } from "../../geometry/flatten.ts";
import type { Lattice } from "../../geometry/lattice.ts";
import { areaOf, boxOf, eachContour, type Path } from "../../geometry/path.ts";
import type { Layer } from "../tile.ts";
import type { Scene } from "./scene.ts";

/** See {@link variationOf} and {@link variationByChance}. */
export interface Balance {
  readonly variation: number;
  readonly chance: number;
}

/** A role's balance: how unevenly its ink lies, and how unevenly the same motifs would have it by chance. */
export function balanceOf(
  { role, path }: Layer,
  lattice: Lattice,
  { motifs, placements, operations }: Scene,
): Balance {
  const areas = motifs.map(({ shapes }) => {
    const shape = shapes.find((other) => other.role === role);
    return shape ? areaOf(shape.path) : 0;
  });
  const pieces = placements.map(({ motif, scale }) => areas[motif]! * scale * scale);
  return {
    variation: variationOf(path, lattice),
    // Images under operations fall where they must: they count as pieces all the same, on average.
    chance: variationByChance(pieces) / Math.sqrt(operations.length),
  };
}

/** The cell is cut into so many parts along each of the lattice's vectors. */
const PARTS = 3;

/**
 * How unevenly a path's ink lies: the coefficient of variation (standard deviation over mean, 0 up to √8) of its ink in the
 * 3 x 3 equal parts of the lattice's cell, on the torus. 0 is the same amount everywhere. Areas are exact but for the
 * flattening of what crosses a border (within 20 µm).
 */
export function variationOf(path: Path, lattice: Lattice): number {
  const sums = new Float64Array(PARTS * PARTS);
  const { a, b } = lattice;
  const det = a[0] * b[1] - a[1] * b[0];
  const u = (x: number, y: number): number => ((x * b[1] - y * b[0]) / det) * PARTS;
  const v = (x: number, y: number): number => ((y * a[0] - x * a[1]) / det) * PARTS;
  eachContour(path, (from, to, index) => {
    const contour = { points: path.points.subarray(from, to), contours: [path.contours[index]!] };
    const { minX, minY, maxX, maxY } = boxOf(contour);
    const us = [u(minX, minY), u(maxX, minY), u(minX, maxY), u(maxX, maxY)];
    const vs = [v(minX, minY), v(maxX, minY), v(minX, maxY), v(maxX, maxY)];
    const [u0, u1] = [Math.floor(Math.min(...us)), Math.floor(Math.max(...us))];
    const [v0, v1] = [Math.floor(Math.min(...vs)), Math.floor(Math.max(...vs))];
    if (u0 === u1 && v0 === v1) {
      add(sums, u0, v0, areaOf(contour));
      return;
    }
    for (const ring of flatten(contour, 20)) {
      const inParts = ring.map((_, i) => {
        const at = i & -2;
        return (i === at ? u : v)(ring[at]!, ring[at + 1]!);
      });
      for (let i = u0; i <= u1; i++) {
        const strip = between(inParts, 0, i);
        for (let j = v0; j <= v1 && strip.length > 0; j++)
          add(sums, i, j, (area(between(strip, 1, j)) * det) / (PARTS * PARTS));
      }
    }
  });
  const mean = sums.reduce((sum, ink) => sum + ink, 0) / sums.length;
  if (!(mean > 0)) return 0;
  let squares = 0;
  for (const ink of sums) squares += (ink - mean) * (ink - mean);
  return Math.sqrt(squares / sums.length) / mean;
}

/**
 * The variation that pieces of these areas would have if each fell into one of the nine parts by chance:
 * √(8 Σ a²) / Σ a, from the variance of a multinomial. The fewer pieces, the larger.
 */
export function variationByChance(areas: readonly number[]): number {
  let [sum, squares] = [0, 0];
  for (const area of areas) {
    sum += area;
    squares += area * area;
  }
  return sum > 0 ? Math.sqrt((PARTS * PARTS - 1) * squares) / sum : 0;
}

function add(sums: Float64Array, i: number, j: number, ink: number): void {
  const at = wrap(i) + PARTS * wrap(j);
  sums[at] = sums[at]! + ink;
}

const wrap = (n: number): number => n - PARTS * Math.floor(n / PARTS);

/** What of a polygon lies between two neighbouring whole numbers on an axis, for its area: edges on the border cancel. */
const between = (ring: ArrayLike<number>, axis: 0 | 1, from: number): number[] =>
  half(half(ring, axis, from, 1), axis, from + 1, -1);

/** The part of a polygon beyond a line, by Sutherland and Hodgman (1974). */
function half(ring: ArrayLike<number>, axis: 0 | 1, line: number, way: 1 | -1): number[] {
  const out: number[] = [];
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const before = (ring[j + axis]! - line) * way;
    const after = (ring[i + axis]! - line) * way;
    if (before < 0 !== after < 0) {
      const t = before / (before - after);
      const [x, y] = [ring[j]! + t * (ring[i]! - ring[j]!), ring[j + 1]! + t * (ring[i + 1]! - ring[j + 1]!)];
      out.push(axis === 0 ? line : x, axis === 0 ? y : line);
    }
    if (after >= 0) out.push(ring[i]!, ring[i + 1]!);
  }
  return out;
}

function area(ring: Ring | readonly number[]): number {
  let sum = 0;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2)
    sum += ring[j]! * ring[i + 1]! - ring[i]! * ring[j + 1]!;
  return sum / 2;
}
