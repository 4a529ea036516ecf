import { integer, length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Length from end to end. 4 to 150 mm; default 16 mm. */
  readonly length: LengthParam;
  /** How many waves. 1 to 4; default 2. */
  readonly waves: NumberParam;
  /** Thickness as a share of the length. 0.05 to 0.14; default 0.09. */
  readonly weight: NumberParam;
} = {
  length: length({ about: "Length from end to end.", min: 4, max: 150, default: 16 }),
  waves: integer({ about: "How many waves.", min: 1, max: 4, default: 2 }),
  weight: number({ about: "Thickness as a share of the length.", min: 0.05, max: 0.14, default: 0.09 }),
};

/** A wavy line of the brush. The origin is its middle. */
export const squiggle: MotifFactory<typeof params, "fleck"> = defineMotif({
  name: "sprigwright/squiggle",
  about: "A wavy line of the brush, fuller in its middle.",
  params,
  parts: ["fleck"],
  draw({ length: long, waves, weight }, tools) {
    const s = sketch(tools, long / 100);
    const w = tools.stray(weight * 100, 0.1);
    const n = waves * 4;
    const high = tools.stray(30 / waves, 0.2) * 0.62;
    const end = 50 - w / 2;
    const points = Array.from({ length: n + 1 }, (_, k) => [
      mix(-end, end, k / n),
      [0, -1, 0, 1][k % 4]! * high * (1 + sway(tools, 0.15)),
    ]).flat();
    return { fleck: s.line(points, w * 0.85, w * 1.1, w * 1.1, w * 0.85) };
  },
});
