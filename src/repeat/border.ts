import { badInput } from "../errors/catalogue.ts";
import { identity } from "../geometry/matrix.ts";
import { choice, length } from "../params/kinds.ts";
import type { LengthParam, Param } from "../params/param.ts";
import type { Length } from "../units/length.ts";
import { mmToUm } from "../units/length.ts";
import { defineRepeat, type RepeatFactory } from "./define.ts";

type BorderPiece = "band" | "corner";
const params: {
  /** How long the band is before it repeats, 5 mm to 10 m. */
  readonly width: Param<Length, number, false>;
  /** How high the band is, 5 mm to 10 m; also the side of its corner. */
  readonly height: Param<Length, number, false>;
  /** Clear ground along the top and the bottom edge. Default 0. */
  readonly margin: LengthParam;
  /** The band (default), or the square that joins two bands, mirrored about its diagonal. */
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
    about: "The band, or the square that joins two bands, mirrored about its diagonal.",
    of: ["band", "corner"],
    default: "band",
  }),
};

/**
 * A border: it repeats from left to right only, and no motif crosses its top or bottom edge.
 *
 * With `piece: "corner"`, the same pattern (same seed, same layout) gives the square for the upper right corner of a
 * frame. Its left edge goes on from the right end of a band; its lower edge goes on into the same band mirrored about
 * the mitre: mirrored left to right, then turned a quarter clockwise. So a frame of n by m repeats closes.
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
