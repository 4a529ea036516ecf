import { identity } from "../geometry/matrix.ts";
import { optional } from "../params/compound.ts";
import { length } from "../params/kinds.ts";
import type { NumberParam, Param } from "../params/param.ts";
import type { Length } from "../units/length.ts";
import { distortion } from "./closing.ts";
import { defineRepeat, type RepeatFactory } from "./define.ts";
import { sixfold } from "./sixfold.ts";

const params: {
  /** From one unit to each of the six around it. 5 mm to 10 m. */
  readonly width: Param<Length, number, false>;
  /** From row to row; width · √3 / 2 when it is left out. 5 mm to 10 m; default: that to the nearest µm, a true hexagon. Give it to land on whole pixels, and say how much `distortion` is fine. */
  readonly height: Param<Length, number | undefined, true>;
  /** How far sizes may be changed so that the repeat closes, as a share of them. 0 to 0.05; default 0: refused, but for the rounding to whole µm that no hexagonal lattice escapes. */
  readonly distortion: NumberParam;
} = {
  width: length({ about: "From one unit to each of the six around it.", min: 5, max: 10_000 }),
  height: optional(
    length({ about: "From row to row; width · √3 / 2 when it is left out.", min: 5, max: 10_000 }),
  ),
  ...distortion,
};

/**
 * Each unit has six neighbours at the same distance, as cells of a honeycomb: the densest even lattice. The unit is
 * an upright rectangle as large as a cell of the honeycomb.
 */
export const hexagonal: RepeatFactory<typeof params> = defineRepeat({
  name: "sprigwright/hexagonal",
  about: "Each unit has six neighbours at the same distance, as cells of a honeycomb.",
  params,
  arrange: (options) => {
    const { width, row, off } = sixfold(options.width, options.height, options.distortion, "hexagonal");
    return {
      unit: { width, height: row },
      lattice: { a: [width, 0], b: [width / 2, row], block: { width, height: 2 * row } },
      operations: [identity],
      distortion: off,
    };
  },
});
