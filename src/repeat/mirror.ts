import { identity, type Matrix } from "../geometry/matrix.ts";
import { choice } from "../params/kinds.ts";
import type { Param } from "../params/param.ts";
import { mmToUm } from "../units/length.ts";
import { defineRepeat, type RepeatFactory, unitSize } from "./define.ts";

type Axis = "across" | "down" | "both";
const params: typeof unitSize & {
  /** Which neighbours are mirror images: those beside it (across, the default), above and below (down), or both. */
  readonly axis: Param<Axis, Axis, true>;
} = {
  ...unitSize,
  axis: choice({
    about: "Which neighbours are mirror images: those beside it, those above and below, or both.",
    of: ["across", "down", "both"],
    default: "across",
  }),
};

/** Neighbouring units are mirror images of each other, across, down, or both ways. */
export const mirror: RepeatFactory<typeof params> = defineRepeat({
  name: "sprigwright/mirror",
  about: "Neighbouring units are mirror images of each other.",
  params,
  arrange: ({ axis, ...size }) => {
    const [width, height] = [mmToUm(size.width), mmToUm(size.height)];
    const across: Matrix = [-1, 0, 0, 1, 2 * width, 0];
    const down: Matrix = [1, 0, 0, -1, 0, 2 * height];
    const turned: Matrix = [-1, 0, 0, -1, 2 * width, 2 * height];
    const block = {
      width: axis === "down" ? width : 2 * width,
      height: axis === "across" ? height : 2 * height,
    };
    return {
      unit: { width, height },
      lattice: { a: [block.width, 0], b: [0, block.height], block },
      operations:
        axis === "across"
          ? [identity, across]
          : axis === "down"
            ? [identity, down]
            : [identity, across, down, turned],
    };
  },
});
