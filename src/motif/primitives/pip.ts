import { length, number, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Length from end to end. 1.5 to 100 mm; default 8 mm. */
  readonly length: LengthParam;
  /** Width as a share of the length. 0.3 to 0.8; default 0.5. */
  readonly width: NumberParam;
  /** How far the tip is bent aside. 0 to 1; default 0.5. */
  readonly bend: NumberParam;
} = {
  length: length({ about: "Length from end to end.", min: 1.5, max: 100, default: 8 }),
  width: number({ about: "Width as a share of the length.", min: 0.3, max: 0.8, default: 0.5 }),
  bend: share({ about: "How far the tip is bent aside.", default: 0.5 }),
};

/** Half widths of the drop at heights, from its tip down. */
const PROFILE = [
  [-47, 0.13],
  [-30, 0.34],
  [-10, 0.63],
  [10, 0.9],
  [27, 1],
  [42, 0.7],
] as const;

/** A pip: a bent drop, its tip up. The origin is the middle of its box. */
export const pip: MotifFactory<typeof params, "fleck"> = defineMotif({
  name: "sprigwright/pip",
  about: "A pip: a plump drop with its tip bent aside.",
  params,
  parts: ["fleck"],
  draw({ length: long, width, bend }, tools) {
    const s = sketch(tools, long / 100);
    const w = tools.stray(width * 50, 0.12);
    const b = tools.stray(mix(0, 22, bend), 0.5);
    const middle = (y: number): number => b * (((y - 50) * (y - 50)) / 10000 - 0.4);
    const side = (hand: number): number[] =>
      PROFILE.flatMap(([y, share]) => [middle(y) + hand * Math.max(2.6, share * w), y]);
    const left = side(-1);
    const back = PROFILE.flatMap((_, k) => left.slice(left.length - 2 * k - 2, left.length - 2 * k));
    return { fleck: s.loop([middle(-50), -50, ...side(1), middle(50), 50, ...back]) };
  },
});
