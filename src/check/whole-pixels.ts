import { isWholePixels, nearestWholeLengths, pixelsAt } from "../units/pixels.ts";
import { type CheckPiece, defineCheck } from "./check.ts";

/** The block is a whole number of pixels at the print's dpi, so that the file repeats without a shifted edge. */
export const wholePixels: CheckPiece = defineCheck({
  name: "sprigwright/whole-pixels",
  about: "The block is a whole number of pixels at the dpi, so that the printed file repeats exactly.",
  look: ({ tile, dpi }) =>
    (["width", "height"] as const)
      .filter((side) => !isWholePixels(tile.block[side], dpi))
      .map((side) => ({
        rule: "whole-pixels",
        severity: "fault" as const,
        measured: Math.round(pixelsAt(tile.block[side], dpi) * 1000) / 1000,
        limit: "a whole number",
        unit: `px ${side === "width" ? "across" : "down"} at ${dpi} dpi`,
        fix: `make the block's ${side} ${nearestWholeLengths(tile.block[side], dpi)
          .map((um) => `${um / 1000} mm`)
          .join(" or ")} instead of ${tile.block[side] / 1000} mm`,
      })),
});
