import { badInput } from "../errors/catalogue.ts";
import type { Ring } from "../geometry/flatten.ts";
import type { Bounds } from "../geometry/images.ts";
import { type Arrangement, modulo } from "../geometry/lattice.ts";
import { readParams } from "../params/compound.ts";
import { choice, integer, number, share } from "../params/kinds.ts";
import type { NumberParam, Param, ParamsIn, ParamsOut } from "../params/param.ts";

type Run = "across" | "down";

/** What {@link stripes} takes. */
export const stripesSpec: {
  /** Stripes in the unit (in the block, where the unit is no rectangle), 1 to 200. */
  readonly count: NumberParam<false>;
  /** Share of the ground that the stripes take, 0.01 to 0.99. Default 0.5: stripes as wide as what lies between. */
  readonly share: NumberParam;
  /** Which way they run: across (level) or down (default). */
  readonly run: Param<Run, Run, true>;
  /** How far they are moved on, 0 to 1, as a part of the distance from stripe to stripe. Default 0: the first lies in the middle of its part of the unit. */
  readonly offset: NumberParam;
} = {
  count: integer({
    about: "Stripes in the unit (in the block, where the unit is no rectangle).",
    min: 1,
    max: 200,
  }),
  share: number({
    about: "Share of the ground that the stripes take.",
    min: 0.01,
    max: 0.99,
    default: 0.5,
  }),
  run: choice({ about: "Which way they run.", of: ["across", "down"], default: "down" }),
  offset: share({
    about: "How far they are moved on, as a part of the distance from stripe to stripe.",
    default: 0,
  }),
};

/** Stripes as plain data: to be given to a layout's `inside` or `outside`. */
export interface Stripes extends ParamsOut<typeof stripesSpec> {
  readonly area: "stripes";
}

/**
 * Even stripes over the whole pattern, for a toss to keep inside of, or outside of.
 * They close over every edge of the repeat, or the layout refuses them and says what would close.
 *
 * @example toss({ inside: stripes({ count: 3 }), motifs: [{ motif: leaf() }] })
 * @throws SprigwrightError `number-range`, `wrong-type`, `missing-option`, `unknown-option`, `unknown-choice`; the layout that
 * takes them throws `stripes-do-not-close` when built
 */
export const stripes = (options: ParamsIn<typeof stripesSpec>): Stripes =>
  Object.freeze({ area: "stripes" as const, ...readParams(stripesSpec, options, "stripes") });

/**
 * The stripes that meet `zone` (µm), as rectangles that reach over it from edge to edge.
 * @throws SprigwrightError `stripes-do-not-close` when the repeat would break them
 */
export function stripeRings(given: Stripes, arrangement: Arrangement, zone: Bounds, where: string): Ring[] {
  checkClosing(given, arrangement, where);
  const down = given.run === "down";
  const [left, top, right, bottom] = [zone[0]!, zone[1]!, zone[2]!, zone[3]!];
  const [from, to] = down ? [left, right] : [top, bottom];
  const pitch = span(arrangement, given.run) / given.count;
  const half = (pitch * given.share) / 2;
  const rings: Ring[] = [];
  for (let k = Math.floor((from - half) / pitch) - 1; k * pitch <= to + pitch; k++) {
    const middle = (k + 0.5 + given.offset) * pitch;
    const [low, high] = [Math.round(middle - half), Math.round(middle + half)];
    rings.push(
      Float64Array.from(
        down
          ? [low, top, high, top, high, bottom, low, bottom]
          : [left, low, right, low, right, high, left, high],
      ),
    );
  }
  return rings;
}

/** What is parted into stripes: the unit's width or height, or the block's (µm). */
function span({ unit, region, lattice }: Arrangement, run: Run): number {
  const size = region ? lattice.block : unit;
  return run === "down" ? size.width : size.height;
}

/** How far from a whole number of stripes a move may be: what rounding of doubles may do. */
const NEARLY = 1e-6;

/** Whether every translation and operation of the repeat maps the stripes onto themselves. */
function stripesClose({ count, run, offset }: Stripes, arrangement: Arrangement): boolean {
  const down = run === "down";
  const per = span(arrangement, run);
  const { a, b } = arrangement.lattice;
  const whole = (parts: number): boolean => Math.abs(parts - Math.round(parts)) < NEARLY;
  return (
    [a, b].every((move) => modulo((down ? move[0] : move[1]) * count, per) === 0) &&
    arrangement.operations.every((m) => {
      // How a level line's height (or an upright line's place) changes: by a factor of 1 or -1, and a move.
      const [slant, factor, move] = down ? [m[2], m[0], m[4]] : [m[1], m[3], m[5]];
      if (Math.abs(slant) > NEARLY || Math.abs(Math.abs(factor) - 1) > NEARLY) return false;
      const parts = (move * count) / per;
      return whole(factor > 0 ? parts : parts - 2 * (0.5 + offset));
    })
  );
}

function checkClosing(given: Stripes, arrangement: Arrangement, where: string): void {
  if (stripesClose(given, arrangement)) return;
  const { count, run } = given;
  const closes = (change: Partial<Stripes>): boolean => stripesClose({ ...given, ...change }, arrangement);
  const counts = Array.from({ length: 200 }, (_, k) => k + 1)
    .filter((n) => closes({ count: n }))
    .sort((p, q) => Math.abs(p - count) - Math.abs(q - count) || p - q)
    .slice(0, 2)
    .sort((p, q) => p - q);
  const other = run === "across" ? "down" : "across";
  const ways = [
    ...(counts.length > 0 ? [`give a count of ${counts.join(" or ")}`] : []),
    ...(closes({ offset: 0 }) ? ["leave the offset out"] : []),
    ...(closes({ run: other }) ? [`let them run ${other}`] : []),
  ];
  throw badInput(
    "stripes-do-not-close",
    where,
    `the repeat does not carry ${count} ${count === 1 ? "stripe" : "stripes"} running ${run}${given.offset > 0 ? `, moved on by ${given.offset},` : ""} over onto each other`,
    ways.length > 0 ? ways.join("; or ") : "choose a repeat without rotations and slants, such as straight",
  );
}
