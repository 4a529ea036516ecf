import { length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Length from end to end. 1.5 to 100 mm; default 9 mm. */
  readonly length: LengthParam;
  /** Thickness as a share of the length. 0.1 to 0.5; default 0.26. */
  readonly weight: NumberParam;
} = {
  length: length({ about: "Length from end to end.", min: 1.5, max: 100, default: 9 }),
  weight: number({ about: "Thickness as a share of the length.", min: 0.1, max: 0.5, default: 0.26 }),
};

/** A dash of the brush, level. The origin is its middle. */
export const dash: MotifFactory<typeof params, "fleck"> = defineMotif({
  name: "sprigwright/dash",
  about: "A dash of the brush: pressed in, drawn along and lifted.",
  params,
  parts: ["fleck"],
  draw({ length: long, weight }, tools) {
    const s = sketch(tools, long / 100);
    const w = tools.stray(weight * 100, 0.15);
    const bow = sway(tools, 7);
    const [from, to] = [-50 + w * 0.46, 50 - w * 0.31];
    return {
      fleck: s.line(
        [from, -1 - bow, from * 0.3, 1.5 + bow, to * 0.45, 1 + bow, to, -1.5 - bow],
        w * 0.92,
        w * 1.06,
        w * 0.9,
        w * 0.62,
      ),
    };
  },
});
