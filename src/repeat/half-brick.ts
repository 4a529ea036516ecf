import { identity } from "../geometry/matrix.ts";
import { mmToUm } from "../units/length.ts";
import { defineRepeat, halved, type RepeatFactory, unitSize } from "./define.ts";

/** Each row of units stands half a width to the right of the one above, as bricks in a wall. */
export const halfBrick: RepeatFactory<typeof unitSize> = defineRepeat({
  name: "sprigwright/half-brick",
  about: "Each row of units stands half a width to the right of the one above.",
  params: unitSize,
  arrange: (size) => {
    const [width, height] = [mmToUm(size.width), mmToUm(size.height)];
    return {
      unit: { width, height },
      lattice: {
        a: [width, 0],
        b: [halved(size.width, "half-brick > width"), height],
        block: { width, height: 2 * height },
      },
      operations: [identity],
    };
  },
});
