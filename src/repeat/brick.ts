import { identity } from "../geometry/matrix.ts";
import type { NumberParam, Param } from "../params/param.ts";
import { mmToUm } from "../units/length.ts";
import { closing, distortion } from "./closing.ts";
import { defineRepeat, type RepeatFactory, unitSize } from "./define.ts";
import { type Fraction, fraction, termsOf } from "./fraction.ts";

const params: typeof unitSize & {
  /** How much farther right each row stands than the one above, as a part of the width. "1/2" to "4/5", in halves, thirds, quarters and fifths. */
  readonly fraction: Param<Fraction, Fraction, false>;
  /** How far sizes may be changed so that the repeat closes, as a share of them. 0 to 0.05; default 0: a width that does not close is refused. */
  readonly distortion: NumberParam;
} = {
  ...unitSize,
  fraction: fraction("How much farther right each row stands than the one above, as a part of the width."),
  ...distortion,
};

/**
 * Each row of units stands a part of the width to the right of the one above. The block is as many units high
 * as the fraction has parts.
 *
 * @example brick({ width: 120, height: 80, fraction: "1/4" })
 */
export const brick: RepeatFactory<typeof params> = defineRepeat({
  name: "sprigwright/brick",
  about: "Each row of units stands a third, quarter or fifth of the width to the right of the one above.",
  params,
  arrange: (options) => {
    const [part, parts] = termsOf(options.fraction);
    const height = mmToUm(options.height);
    const { um: width, off } = closing(options.width, parts, "brick > width", options.distortion);
    return {
      unit: { width, height },
      lattice: {
        a: [width, 0],
        b: [(width / parts) * part, height],
        block: { width, height: parts * height },
      },
      operations: [identity],
      distortion: off,
    };
  },
});
