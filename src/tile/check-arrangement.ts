import { badInput, shown } from "../errors/catalogue.ts";
import type { Arrangement, Vector } from "../geometry/lattice.ts";
import type { Matrix } from "../geometry/matrix.ts";

/** Longest side of a block (µm): 100 m. */
const LONGEST = 100_000_000;

/** Most copies of the unit in one block, by cells and by operations. */
const MOST_COPIES = 144;

/**
 * What a repeat returned, checked and frozen: whole micrometres, a block that the lattice really repeats
 * straight, and operations that map whole micrometres to whole micrometres, the identity first.
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
  const { unit, lattice, operations } = value as Arrangement;
  const { a, b, block } = lattice ?? {};
  for (const [name, size] of [["unit", unit] as const, ["block", block] as const])
    if (!isSize(size?.width) || !isSize(size?.height))
      throw wrong(`its ${name} is not a width and a height of 1 to ${LONGEST} µm`);
  if (!isVector(a) || !isVector(b)) throw wrong("a and b of its lattice are not pairs of whole µm");
  const cell = Math.abs(a[0] * b[1] - a[1] * b[0]);
  const cells = cell > 0 ? (block.width * block.height) / cell : 0;
  if (!Number.isInteger(cells) || cells < 1) throw wrong("its block is not a whole number of lattice cells");
  if (!isTranslation(block.width, 0, a, b) || !isTranslation(0, block.height, a, b))
    throw wrong("its block does not repeat straight in its lattice");
  if (!Array.isArray(operations) || operations.length < 1 || operations.length * cells > MOST_COPIES)
    throw wrong(`it has not from 1 to ${MOST_COPIES} copies of the unit in a block`);
  if (
    !operations.every(isWhole) ||
    !operations[0]!.every((entry, i) => entry === (i === 0 || i === 3 ? 1 : 0))
  )
    throw wrong("its operations are not whole-number matrices with the identity first");
  return Object.freeze({
    unit: Object.freeze({ width: unit.width, height: unit.height }),
    lattice: Object.freeze({
      a: Object.freeze([a[0], a[1]] as const),
      b: Object.freeze([b[0], b[1]] as const),
      block: Object.freeze({ width: block.width, height: block.height }),
    }),
    operations: Object.freeze(operations.map((matrix) => Object.freeze([...matrix] as unknown as Matrix))),
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

/** Whether a matrix maps whole numbers to whole numbers and keeps areas: a turn or mirror by quarters, or a shear. */
const isWhole = (matrix: unknown): matrix is Matrix =>
  Array.isArray(matrix) &&
  matrix.length === 6 &&
  matrix.every((entry) => Number.isInteger(entry) && Math.abs(entry) <= 2 * LONGEST) &&
  Math.abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]) === 1;
