import { identity, type Matrix } from "../geometry/matrix.ts";
import { choice } from "../params/kinds.ts";
import type { Param } from "../params/param.ts";
import { mmToUm } from "../units/length.ts";
import { defineRepeat, type RepeatFactory, unitSize } from "./define.ts";

type Axis = "across" | "down" | "both";
const params: typeof unitSize & {
  /** Which neighbours are turned half a turn: those beside it, above and below, or both, as on a chequerboard. Default both. */
  readonly axis: Param<Axis, Axis, true>;
} = {
  ...unitSize,
  axis: choice({
    about:
      "Which neighbours are turned half a turn: those beside it, above and below, or both, as on a chequerboard.",
    of: ["across", "down", "both"],
    default: "both",
  }),
};

/** Every second unit is turned half a turn, so that the cloth has no top: for fabric that is cut both ways. */
export const turnover: RepeatFactory<typeof params> = defineRepeat({
  name: "sprigwright/turnover",
  about: "Every second unit is turned half a turn, so that the cloth has no top.",
  params,
  arrange: ({ axis, ...size }) => {
    const [width, height] = [mmToUm(size.width), mmToUm(size.height)];
    // Half a turn about the middle of the right edge, or of the lower one.
    const turned: Matrix =
      axis === "down" ? [-1, 0, 0, -1, width, 2 * height] : [-1, 0, 0, -1, 2 * width, height];
    const block = {
      width: axis === "down" ? width : 2 * width,
      height: axis === "across" ? height : 2 * height,
    };
    return {
      unit: { width, height },
      lattice:
        axis === "both"
          ? { a: [width, height], b: [-width, height], block }
          : { a: [block.width, 0], b: [0, block.height], block },
      operations: [identity, turned],
    };
  },
});
