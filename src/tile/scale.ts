import { badInput, outOfRange, wrongType } from "../errors/catalogue.ts";
import { commonDivisor } from "../geometry/block.ts";
import type { Arrangement, Vector } from "../geometry/lattice.ts";
import type { Matrix } from "../geometry/matrix.ts";
import { isWhole } from "../geometry/matrix.ts";
import { deepFreeze } from "../params/canonical.ts";
import { finishTile, type Laid } from "./finish.ts";
import type { Tile } from "./tile.ts";

/** Factors taken: from a twentieth to twenty times. */
export const SCALES = { min: 0.05, max: 20 } as const;

/**
 * The same tile, larger or smaller: 0.5 makes a small print of a medium one, 2 a large one.
 *
 * Block, lattice and operations are scaled exactly, or not at all: coordinates are whole micrometres, so a factor
 * that would leave a fraction of one is refused, and the nearest that do not are named. Every motif is then drawn
 * anew at its new size and rounded to whole µm once, so seams and mirror images stay exact; a distance between two
 * motifs is off by a few µm, from rounding. `figures`, `digest` and `recipe` are those of the new tile: the recipe
 * records the factor, so that a kit builds the same tile from it.
 *
 * @throws SprigwrightError `number-range` outside 0.05 to 20; `inexact-scale` with the nearest exact factors;
 * `scaled-before` for a tile that was scaled already, since its motifs were rounded: scale the one it came from
 */
export function scaleTile<R extends string>(tile: Tile<R>, factor: number): Tile<R> {
  const where = `${tile.name} > scale`;
  checkScale(factor, where);
  if (factor === 1) return tile;
  const before = tile.recipe.scale;
  if (before !== undefined)
    throw badInput(
      "scaled-before",
      where,
      `this tile was scaled by ${before} already`,
      `scale the tile that it came from, by ${Number((before * factor).toPrecision(12))}`,
    );
  const laid = scaled({ ...tile, recipe: { ...tile.recipe, scale: factor } }, factor, tile.name);
  return finishTile(laid) as Tile<R>;
}

/** Refuses what is no factor. @throws SprigwrightError `wrong-type`, `number-range` */
export function checkScale(factor: unknown, where: string): asserts factor is number {
  if (typeof factor !== "number" || !Number.isFinite(factor))
    throw wrongType(where, factor, "a factor, such as 0.5 or 2");
  if (factor < SCALES.min || factor > SCALES.max) throw outOfRange(where, factor, SCALES, "");
}

/** What was laid out, scaled: the recipe must say the factor already. */
export function scaled(laid: Laid, factor: number, name: string): Laid {
  const arrangement = scaledArrangement(laid.arrangement, factor, `${name} > scale`);
  const placements = laid.placements.map(({ x, y, scale, ...rest }) => ({
    ...rest,
    x: Math.round(x * factor) + 0,
    y: Math.round(y * factor) + 0,
    scale: scale * factor,
  }));
  const gap = laid.gap === undefined ? undefined : laid.gap * factor;
  return deepFreeze({ motifs: laid.motifs, placements, gap, arrangement, recipe: laid.recipe });
}

function scaledArrangement(arrangement: Arrangement, factor: number, where: string): Arrangement {
  const { unit, region, lattice, operations, border } = arrangement;
  const { a, b, block } = lattice;
  const wholes = operations.filter(isWhole).flatMap((m) => [m[4], m[5]]);
  // A unit that is only the box around a region may be anything.
  const sides = region ? [] : [unit.width, unit.height];
  const measure = [...a, ...b, block.width, block.height, ...sides, ...wholes].reduce(commonDivisor, 0);
  const count = Math.round(factor * measure);
  if (count / measure !== factor) throw inexact(where, factor, measure);
  const by = (um: number): number => (um / measure) * count + 0;
  const grown = (um: number): number => Math.ceil(um * factor);
  const both = ([x, y]: Vector): Vector => [by(x), by(y)];
  const moved = (m: Matrix): Matrix =>
    isWhole(m)
      ? [m[0], m[1], m[2], m[3], by(m[4]), by(m[5])]
      : [m[0], m[1], m[2], m[3], m[4] * factor, m[5] * factor];
  return {
    ...arrangement,
    unit: region
      ? { width: grown(unit.width), height: grown(unit.height) }
      : { width: by(unit.width), height: by(unit.height) },
    ...(region ? { region: region.map(([x, y]) => [x * factor, y * factor] as const) } : {}),
    lattice: { a: both(a), b: both(b), block: { width: by(block.width), height: by(block.height) } },
    operations: operations.map(moved),
    ...(border ? { border: { ...border, margin: border.margin * factor } } : {}),
  };
}

function inexact(where: string, factor: number, measure: number): Error {
  const below = Math.floor(factor * measure);
  const near = [below, below + 1].filter((count) => count > 0).map((count) => count / measure);
  return badInput(
    "inexact-scale",
    where,
    `${factor} times a repeat whose measures share ${measure / 1000} mm is not a whole number of micrometres`,
    `nearest exact factors: ${near.join(" and ")}`,
  );
}
