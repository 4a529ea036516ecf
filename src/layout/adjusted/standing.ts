import { badInput, outOfRange } from "../../errors/catalogue.ts";
import type { MotifUse } from "../../motif/motif.ts";
import { wrapTurns } from "../../seed/trigonometry.ts";
import { mmToUm } from "../../units/length.ts";
import type { DrawnMotif, LayoutTools, Standing } from "../layout.ts";
import type { Stand } from "./changes.ts";

/**
 * The motif that a change puts somewhere, where it puts it.
 * @throws SprigwrightError `outside-repeat` for a place that is not in the block, `number-range` for a drawing that
 * the motif does not have
 */
export function standingOf(change: Stand, use: MotifUse, tools: LayoutTools, where: string): Standing {
  const { id, turn, scale, flip } = change;
  const [x, y] = [mmToUm(change.x), mmToUm(change.y)];
  const { block } = tools.arrangement.lattice;
  for (const [axis, um, size] of [["x", x, block.width] as const, ["y", y, block.height] as const])
    if (um < 0 || um > size)
      throw badInput(
        "outside-repeat",
        `${where} > ${axis}`,
        `${um / 1000} mm lies outside the block, which is 0 to ${size / 1000} mm`,
        `stand it within the block, where the same motif shows again: ${(um - size * Math.floor(um / size)) / 1000} mm is the same place`,
      );
  const { index, motif } = drawingOf(use, change.drawing, tools, where);
  return {
    placement: Object.freeze({ id, motif: index, x, y, turn: wrapTurns(turn), scale, flip }),
    motif,
  };
}

/** One of a motif's drawings by its number, from 1. @throws SprigwrightError `number-range` */
export function drawingOf(use: MotifUse, number: number, tools: LayoutTools, where: string): DrawnMotif {
  const drawn = tools.draw(use);
  const one = drawn[number - 1];
  if (!one) throw outOfRange(`${where} > drawing`, number, { min: 1, max: drawn.length }, "");
  return one;
}
