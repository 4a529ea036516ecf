import type { Ring } from "../../../geometry/flatten.ts";
import type { Field } from "./layer.ts";

// Sides of a cell: where a contour enters it, and where it leaves.
const [TOP, RIGHT, BOTTOM, LEFT] = [0, 1, 2, 3];

/**
 * For each pattern of inside corners (1 upper left, 2 upper right, 4 lower right, 8 lower left), the side by which a
 * contour that enters by the side of the index leaves, or -1. The inside is at its right hand.
 */
const WAYS: readonly (readonly number[])[] = [
  [-1, -1, -1, -1],
  [LEFT, -1, -1, -1],
  [-1, TOP, -1, -1],
  [-1, LEFT, -1, -1],
  [-1, -1, RIGHT, -1],
  [LEFT, -1, RIGHT, -1],
  [-1, -1, TOP, -1],
  [-1, -1, LEFT, -1],
  [-1, -1, -1, BOTTOM],
  [BOTTOM, -1, -1, -1],
  [-1, TOP, -1, BOTTOM],
  [-1, BOTTOM, -1, -1],
  [-1, -1, -1, RIGHT],
  [RIGHT, -1, -1, -1],
  [-1, -1, -1, TOP],
  [-1, -1, -1, -1],
];
/** Patterns 5 and 10 where the middle of the cell is inside: both inside corners hang together. */
const JOINED_5: readonly number[] = [RIGHT, -1, LEFT, -1];
const JOINED_10: readonly number[] = [-1, BOTTOM, -1, TOP];

/**
 * The lines along which a field is 0, as rings in pixels: outer ones positive, holes negative (marching squares,
 * after Lorensen and Cline, 1987; saddles by the mean of their corners). Its outermost pixels must be outside.
 */
export function contoursOf(field: Field): Ring[] {
  const { width, height, values } = field;
  const done = new Uint8Array(width * height);
  const rings: Ring[] = [];
  for (let y = 0; y + 1 < height; y++)
    for (let x = 0, at = y * width; x + 1 < width; x++, at++) {
      // A closed line crosses the sides between pixels of one row somewhere.
      const inside = values[at]! > 0;
      if (inside === values[at + 1]! > 0) continue;
      const from = inside ? TOP : BOTTOM;
      const cell = inside ? at : at - width;
      if (cell < 0 || done[cell]! & (1 << from)) continue;
      rings.push(follow(field, done, cell, from));
    }
  return rings;
}

function follow(field: Field, done: Uint8Array, first: number, firstSide: number): Ring {
  const { width, values } = field;
  const points: number[] = [];
  let [cell, side] = [first, firstSide];
  do {
    done[cell] = done[cell]! | (1 << side);
    addPoint(field, cell, side, points);
    const leaves = waysOf(values, cell, width)[side]!;
    cell += leaves === TOP ? -width : leaves === BOTTOM ? width : leaves === LEFT ? -1 : 1;
    side = (leaves + 2) % 4;
  } while (cell !== first || side !== firstSide);
  return Float64Array.from(points);
}

function waysOf(values: Float32Array, cell: number, width: number): readonly number[] {
  const [a, b] = [values[cell]!, values[cell + 1]!];
  const [d, c] = [values[cell + width]!, values[cell + width + 1]!];
  const pattern = (a > 0 ? 1 : 0) | (b > 0 ? 2 : 0) | (c > 0 ? 4 : 0) | (d > 0 ? 8 : 0);
  if ((pattern === 5 || pattern === 10) && a + b + c + d > 0) return pattern === 5 ? JOINED_5 : JOINED_10;
  return WAYS[pattern]!;
}

/** Where the field is 0 on a side of a cell, along the straight line between its ends. */
function addPoint({ width, values, x, y }: Field, cell: number, side: number, points: number[]): void {
  const start = cell + (side === RIGHT ? 1 : side === BOTTOM ? width : 0);
  const flat = side === TOP || side === BOTTOM;
  const [p, q] = [values[start]!, values[start + (flat ? 1 : width)]!];
  const t = p / (p - q);
  const column = start % width;
  const row = (start - column) / width;
  points.push(x + column + 0.5 + (flat ? t : 0), y + row + 0.5 + (flat ? 0 : t));
}
