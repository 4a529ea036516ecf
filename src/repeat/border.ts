import { badInput } from "../errors/catalogue.ts";
import { identity } from "../geometry/matrix.ts";
import { choice, length } from "../params/kinds.ts";
import type { LengthParam, Param } from "../params/param.ts";
import type { Length } from "../units/length.ts";
import { mmToUm } from "../units/length.ts";
import { defineRepeat, type RepeatFactory } from "./define.ts";

type BorderPiece = "band" | "left-corner" | "right-corner";
const params: {
  /** How long the band is before it repeats, 5 mm to 10 m. */
  readonly width: Param<Length, number, false>;
  /** How high the band is, 5 mm to 10 m; also the side of its corner. */
  readonly height: Param<Length, number, false>;
  /** Clear ground along the top and the bottom edge. Default 0. */
  readonly margin: LengthParam;
  /** The band (default), or the square for the upper left or the upper right corner of a frame. */
  readonly piece: Param<BorderPiece, BorderPiece, true>;
} = {
  width: length({ about: "How long the band is before it repeats.", min: 5, max: 10_000 }),
  height: length({ about: "How high the band is; also the side of its corner.", min: 5, max: 10_000 }),
  margin: length({
    about: "Clear ground along the top and the bottom edge.",
    min: 0,
    max: 5000,
    default: 0,
  }),
  piece: choice({
    about: "The band, or the square for the upper left or the upper right corner of a frame.",
    of: ["band", "left-corner", "right-corner"],
    default: "band",
  }),
};

/**
 * A border: it repeats from left to right only, and no motif crosses its top or bottom edge.
 *
 * The same pattern (same seed, same layout) with `piece: "left-corner"` and `piece: "right-corner"` gives the squares for
 * the upper corners of a frame, mitred: the band goes on into them and is mirrored about their diagonals. The sides of
 * the frame are the band mirrored left to right and turned a quarter: clockwise for the right one, counterclockwise
 * for the left one. The lower half is the upper one turned by half a turn. So a frame of n by m repeats closes.
 */
export const border: RepeatFactory<typeof params> = defineRepeat({
  name: "sprigwright/border",
  about: "A band that repeats from left to right only, with a mitred corner to match.",
  params,
  arrange: ({ piece, ...sizes }) => {
    const [width, height, margin] = [mmToUm(sizes.width), mmToUm(sizes.height), mmToUm(sizes.margin)];
    if (2 * margin >= height)
      throw badInput(
        "length-range",
        "border > margin",
        `two margins of ${sizes.margin} mm leave nothing of a height of ${sizes.height} mm`,
        `give a margin below ${sizes.height / 2} mm`,
      );
    const unit = { width, height };
    return {
      unit,
      // Downwards, bands lie side by side: cloth is printed with several, and cut between them.
      lattice: { a: [width, 0], b: [0, height], block: unit },
      operations: [identity],
      border: { margin, piece },
    };
  },
});
