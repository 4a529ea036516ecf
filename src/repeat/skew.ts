import { badInput } from "../errors/catalogue.ts";
import { blockOf, cross, shortestPair } from "../geometry/block.ts";
import type { Vector } from "../geometry/lattice.ts";
import { identity } from "../geometry/matrix.ts";
import { framed } from "../geometry/region.ts";
import type { Param } from "../params/param.ts";
import { mmToUm } from "../units/length.ts";
import { defineRepeat, type RepeatFactory } from "./define.ts";
import { type Move, move } from "./vector.ts";

/** Most units in one block; a straight equivalent of more is no use to a printer. */
const MOST_UNITS = 144;
/** Longest side of a block (µm). */
const LONGEST = 100_000_000;
/** Shortest distance between a unit and its copies (µm). */
const SHORTEST = 5000;

const params: {
  /** From each unit to the next along a row: [right, down]. Each -10 m to 10 m. */
  readonly a: Param<Move, readonly [number, number], false>;
  /** From each unit to the next along a column: [right, down]. Each -10 m to 10 m. */
  readonly b: Param<Move, readonly [number, number], false>;
} = {
  a: move("From each unit to the next along a row: [right, down]."),
  b: move("From each unit to the next along a column: [right, down]."),
};

/**
 * Any two moves that are not in line span the repeat: slants, spirals round a tube, drops of any amount. The unit is
 * the parallelogram of the two shortest moves of the same lattice.
 *
 * @example skew({ a: [80, 20], b: [-20, 90] })
 */
export const skew: RepeatFactory<typeof params> = defineRepeat({
  name: "sprigwright/skew",
  about: "Any two moves that are not in line span the repeat.",
  params,
  arrange: (options) => {
    const [a, b] = [inUm(options.a), inUm(options.b)];
    if (cross(a, b) === 0)
      throw badInput(
        "collinear",
        "skew > b",
        `${said(a)} and ${said(b)} lie in one line, so they span no area`,
        "turn one of them, for instance by giving b another sign on one side",
      );
    const [short, long] = shortestPair(a, b);
    if (short[0] * short[0] + short[1] * short[1] < SHORTEST * SHORTEST)
      throw badInput(
        "collinear",
        "skew",
        `combined, ${said(a)} and ${said(b)} bring a unit within ${SHORTEST / 1000} mm of its own copy`,
        "make the moves longer, or turn them farther apart",
      );
    const block = blockOf(a, b);
    if (!isUseful(a, b))
      throw badInput(
        "block-too-large",
        "skew",
        `the smallest upright rectangle that repeats straight would be ${block.width / 1000} x ${block.height / 1000} mm, ${unitsIn(a, b)} units`,
        advice(a, b),
      );
    const { region, unit } = framed([[0, 0], short, [short[0] + long[0], short[1] + long[1]], long]);
    return { unit, region, lattice: { a, b, block }, operations: [identity] };
  },
});

const inUm = ([right, down]: readonly [number, number]): Vector => [mmToUm(right), mmToUm(down)];
const said = ([x, y]: Vector): string => `[${x / 1000}, ${y / 1000}]`;

function unitsIn(a: Vector, b: Vector): number {
  const { width, height } = blockOf(a, b);
  return (width / Math.abs(cross(a, b))) * height;
}

function isUseful(a: Vector, b: Vector): boolean {
  const { width, height } = blockOf(a, b);
  return unitsIn(a, b) <= MOST_UNITS && width <= LONGEST && height <= LONGEST;
}

/** The same moves on ever coarser steps, until their block is useful. */
function advice(a: Vector, b: Vector): string {
  for (const step of [10, 50, 100, 250, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000]) {
    const [p, q] = [a, b].map(([x, y]): Vector => [step * Math.round(x / step), step * Math.round(y / step)]);
    if (!p || !q || cross(p, q) === 0 || !isUseful(p, q)) continue;
    const { width, height } = blockOf(p, q);
    return `take rounder moves: a: ${said(p)} and b: ${said(q)} have a block of ${width / 1000} x ${height / 1000} mm`;
  }
  return "make one of the moves level or upright";
}
