import { length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Width of the whole. 2 to 100 mm; default 9 mm. */
  readonly width: LengthParam;
  /** Thickness as a share of the width. 0.08 to 0.24; default 0.15. */
  readonly weight: NumberParam;
} = {
  width: length({ about: "Width of the whole.", min: 2, max: 100, default: 9 }),
  weight: number({ about: "Thickness as a share of the width.", min: 0.08, max: 0.24, default: 0.15 }),
};

/** A tick: a short stroke down, a long one up. The origin is the middle of its box. */
export const tick: MotifFactory<typeof params, "fleck"> = defineMotif({
  name: "sprigwright/tick",
  about: "A tick of the pen: a short stroke down, a long one up.",
  params,
  parts: ["fleck"],
  draw({ width, weight }, tools) {
    const s = sketch(tools, width / 100);
    const w = tools.stray(weight * 100, 0.12);
    const [x, y] = [-20 + sway(tools, 4), 33 + sway(tools, 3)];
    const far = 50 - w * 0.35;
    return {
      fleck: [
        s.line([-50 + w * 0.4, 7, mix(-50, x, 0.6), 19, x, y], w * 0.8, w, w * 1.1),
        s.line([x, y, x + 16, 4, far, -36], w * 1.1, w, w * 0.7),
      ],
    };
  },
});
