import { badInput, shown } from "../errors/catalogue.ts";
import { type Arrangement, type Border, cellAreaOf, type Vector } from "../geometry/lattice.ts";
import type { Matrix } from "../geometry/matrix.ts";
import type { Region } from "../geometry/region.ts";

/** Longest side of a block (µm): 100 m. */
const LONGEST = 100_000_000;

/** Most copies of the unit in one block, by cells and by operations. */
const MOST_COPIES = 144;

/**
 * What a repeat returned, checked and frozen: whole micrometres, a block that the lattice really repeats
 * straight, a convex region, and operations that keep areas and map the lattice onto itself, the identity first.
 * @throws SprigwrightError `bad-arrangement`
 */
export function checkArrangement(value: unknown, where: string): Arrangement {
  const wrong = (what: string): Error =>
    badInput(
      "bad-arrangement",
      where,
      what,
      "return { unit, lattice: { a, b, block }, operations } in whole µm",
    );
  if (typeof value !== "object" || value === null) throw wrong(`it returned ${shown(value)}`);
  const { unit, region, lattice, operations, distortion = 0, border } = value as Arrangement;
  const { a, b, block } = lattice ?? {};
  for (const [name, size] of [["unit", unit] as const, ["block", block] as const])
    if (!isSize(size?.width) || !isSize(size?.height))
      throw wrong(`its ${name} is not a width and a height of 1 to ${LONGEST} µm`);
  if (!isVector(a) || !isVector(b)) throw wrong("a and b of its lattice are not pairs of whole µm");
  const cell = cellAreaOf({ a, b });
  const cells = cell > 0 ? (block.width * block.height) / cell : 0;
  if (!Number.isInteger(cells) || cells < 1) throw wrong("its block is not a whole number of lattice cells");
  if (!isTranslation(block.width, 0, a, b) || !isTranslation(0, block.height, a, b))
    throw wrong("its block does not repeat straight in its lattice");
  if (!Array.isArray(operations) || operations.length < 1 || operations.length * cells > MOST_COPIES)
    throw wrong(`it has not from 1 to ${MOST_COPIES} copies of the unit in a block`);
  if (
    !operations.every((matrix) => isSymmetry(matrix, a, b)) ||
    !operations[0]!.every((entry, i) => entry === (i === 0 || i === 3 ? 1 : 0))
  )
    throw wrong("its operations are not symmetries of its lattice with the identity first");
  if (region !== undefined && !isConvex(region))
    throw wrong("its region is not a convex polygon, clockwise on the page, of points [x, y] in µm");
  if (typeof distortion !== "number" || !(distortion >= 0 && distortion <= 1))
    throw wrong(`its distortion is ${shown(distortion)}, not a share from 0 to 1`);
  if (border !== undefined && !isBorder(border, unit.height))
    throw wrong(
      "its border is not a margin that leaves some of the height, and a piece: band, left-corner or right-corner",
    );
  return Object.freeze({
    unit: Object.freeze({ width: unit.width, height: unit.height }),
    ...(region ? { region: Object.freeze(region.map(([x, y]) => Object.freeze([x, y] as const))) } : {}),
    lattice: Object.freeze({
      a: Object.freeze([a[0], a[1]] as const),
      b: Object.freeze([b[0], b[1]] as const),
      block: Object.freeze({ width: block.width, height: block.height }),
    }),
    operations: Object.freeze(operations.map((matrix) => Object.freeze([...matrix] as unknown as Matrix))),
    ...(distortion > 0 ? { distortion } : {}),
    ...(border ? { border: Object.freeze({ margin: border.margin, piece: border.piece }) } : {}),
  });
}

const isSize = (um: unknown): boolean =>
  Number.isInteger(um) && (um as number) >= 1 && (um as number) <= LONGEST;

const isVector = (v: unknown): v is Vector =>
  Array.isArray(v) && v.length === 2 && v.every((um) => Number.isInteger(um) && Math.abs(um) <= LONGEST);

/** Whether (x, y) is a whole combination of a and b, by Cramer's rule. */
function isTranslation(x: number, y: number, a: Vector, b: Vector): boolean {
  const cell = a[0] * b[1] - a[1] * b[0];
  return Number.isInteger((x * b[1] - y * b[0]) / cell) && Number.isInteger((a[0] * y - a[1] * x) / cell);
}

/** How far a mapped lattice vector may lie from a lattice point, in cells: what rounding of doubles may do. */
const NEARLY = 1e-9;

/** Whether a matrix keeps areas and maps the lattice onto itself: a turn, a mirror, a glide, or a shear. */
function isSymmetry(matrix: unknown, a: Vector, b: Vector): matrix is Matrix {
  if (!Array.isArray(matrix) || matrix.length !== 6) return false;
  if (!matrix.every((entry) => Number.isFinite(entry) && Math.abs(entry) <= 2 * LONGEST)) return false;
  const [p, q, r, s] = matrix as unknown as Matrix;
  const cell = a[0] * b[1] - a[1] * b[0];
  const lands = ([x, y]: Vector): boolean => {
    const [u, v] = [p * x + r * y, q * x + s * y];
    return [(u * b[1] - v * b[0]) / cell, (a[0] * v - a[1] * u) / cell].every(
      (n) => Math.abs(n - Math.round(n)) < NEARLY,
    );
  };
  return Math.abs(Math.abs(p * s - q * r) - 1) < NEARLY && lands(a) && lands(b);
}

const isBorder = (border: Partial<Border>, height: number): boolean =>
  Number.isInteger(border?.margin) &&
  border.margin! >= 0 &&
  2 * border.margin! < height &&
  ["band", "left-corner", "right-corner"].includes(border.piece!);

function isConvex(region: unknown): region is Region {
  if (!Array.isArray(region) || region.length < 3 || region.length > 12) return false;
  const fine = (p: unknown): boolean =>
    Array.isArray(p) && p.length === 2 && p.every((um) => Number.isFinite(um) && Math.abs(um) <= LONGEST);
  if (!region.every(fine)) return false;
  const corners = region as unknown as Region;
  return corners.every(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length]!;
    const [lastX, lastY] = corners[(i + 2) % corners.length]!;
    return (nextX - x) * (lastY - nextY) - (nextY - y) * (lastX - nextX) > 0;
  });
}
