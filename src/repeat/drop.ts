import { identity } from "../geometry/matrix.ts";
import type { NumberParam, Param } from "../params/param.ts";
import { mmToUm } from "../units/length.ts";
import { closing, distortion } from "./closing.ts";
import { defineRepeat, type RepeatFactory, unitSize } from "./define.ts";
import { type Fraction, fraction, termsOf } from "./fraction.ts";

const params: typeof unitSize & {
  /** How much lower each column stands than the one before, as a part of the height. "1/2" to "4/5", in halves, thirds, quarters and fifths. */
  readonly fraction: Param<Fraction, Fraction, false>;
  /** How far sizes may be changed so that the repeat closes, as a share of them. 0 to 0.05; default 0: a height that does not close is refused. */
  readonly distortion: NumberParam;
} = {
  ...unitSize,
  fraction: fraction("How much lower each column stands than the one before, as a part of the height."),
  ...distortion,
};

/**
 * Each column of units stands a part of the height lower than the one before: the rows are harder to spot than
 * in a half-drop. The block is as many units wide as the fraction has parts.
 *
 * @example drop({ width: 120, height: 120, fraction: "1/3" })
 */
export const drop: RepeatFactory<typeof params> = defineRepeat({
  name: "sprigwright/drop",
  about: "Each column of units stands a third, quarter or fifth of the height lower than the one before.",
  params,
  arrange: (options) => {
    const [part, parts] = termsOf(options.fraction);
    const width = mmToUm(options.width);
    const { um: height, off } = closing(options.height, parts, "drop > height", options.distortion);
    return {
      unit: { width, height },
      lattice: {
        a: [width, (height / parts) * part],
        b: [0, height],
        block: { width: parts * width, height },
      },
      operations: [identity],
      distortion: off,
    };
  },
});
