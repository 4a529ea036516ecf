import { integer, length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Across: diameter of the circle that the strokes touch. 3 to 100 mm; default 11 mm. */
  readonly size: LengthParam;
  /** How many strokes. 5 to 10; default 6. */
  readonly strokes: NumberParam;
  /** How far the strokes start from the middle, as a share of their reach. 0.2 to 0.5; default 0.3. */
  readonly open: NumberParam;
} = {
  size: length({
    about: "Across: diameter of the circle that the strokes touch.",
    min: 3,
    max: 100,
    default: 11,
  }),
  strokes: integer({ about: "How many strokes.", min: 5, max: 10, default: 6 }),
  open: number({
    about: "How far the strokes start from the middle, as a share of their reach.",
    min: 0.2,
    max: 0.5,
    default: 0.3,
  }),
};

/** Loose strokes around an open middle. The origin is its middle. */
export const asterisk: MotifFactory<typeof params, "fleck"> = defineMotif({
  name: "sprigwright/asterisk",
  about: "Loose brush strokes around an open middle, as one dabs a small flower.",
  params,
  parts: ["fleck"],
  draw({ size, strokes, open }, tools) {
    const s = sketch(tools, size / 100, 0.6);
    const wide = Math.min(17, 68 / strokes);
    const from = Math.max(open * 50, (strokes * wide) / 9);
    const fleck = Array.from({ length: strokes }, (_, k) => {
      const d = s.at(0, 0, heading((k + sway(tools, 0.12)) / strokes));
      const to = tools.stray(50 - wide * 0.5, 0.1);
      const b = sway(tools, 3);
      return d.line([0, -from - wide * 0.25, b, -mix(from, to, 0.5), 0, -to], wide * 0.5, wide * 0.8, wide);
    });
    return { fleck };
  },
});
