import { identity } from "../geometry/matrix.ts";
import { mmToUm } from "../units/length.ts";
import { defineRepeat, type RepeatFactory, unitSize } from "./define.ts";

/** The unit repeats in straight rows and columns (also called square or block repeat). */
export const straight: RepeatFactory<typeof unitSize> = defineRepeat({
  name: "sprigwright/straight",
  about: "The unit repeats in straight rows and columns.",
  params: unitSize,
  arrange: (size) => {
    const [width, height] = [mmToUm(size.width), mmToUm(size.height)];
    return {
      unit: { width, height },
      lattice: { a: [width, 0], b: [0, height], block: { width, height } },
      operations: [identity],
    };
  },
});
