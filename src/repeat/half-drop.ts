import { identity } from "../geometry/matrix.ts";
import { mmToUm } from "../units/length.ts";
import { defineRepeat, halved, type RepeatFactory, unitSize } from "./define.ts";

/** Each column of units stands half a height lower than the one before: the classic for tossed florals. */
export const halfDrop: RepeatFactory<typeof unitSize> = defineRepeat({
  name: "sprigwright/half-drop",
  about: "Each column of units stands half a height lower than the one before.",
  params: unitSize,
  arrange: (size) => {
    const [width, height] = [mmToUm(size.width), mmToUm(size.height)];
    return {
      unit: { width, height },
      lattice: {
        a: [width, halved(size.height, "half-drop > height")],
        b: [0, height],
        block: { width: 2 * width, height },
      },
      operations: [identity],
    };
  },
});
