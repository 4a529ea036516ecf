import { ellipse, loop } from "../../geometry/shapes.ts";
import { length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sway } from "../builders/sway.ts";
import { heading } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the dot: its diameter when it is round. 0.4 to 100 mm; default 4 mm. */
  readonly size: LengthParam;
  /** Width as a share of the height: below 1 the dot is an upright oval. 0.3 to 1; default 1. */
  readonly width: NumberParam;
} = {
  size: length({
    about: "Height of the dot: its diameter when it is round.",
    min: 0.4,
    max: 100,
    default: 4,
  }),
  width: number({
    about: "Width as a share of the height: below 1 the dot is an upright oval.",
    min: 0.3,
    max: 1,
    default: 1,
  }),
};

/** Points that a dab goes through: an odd number, so that it never looks like a worn square. */
const KNOTS = 7;

/**
 * A dot: a true circle or oval as it is, a dab of the brush when drawings vary.
 * The origin is its middle. For fillers between larger motifs, and for spots set in rows.
 */
export const dot: MotifFactory<typeof params, "dot"> = defineMotif({
  name: "sprigwright/dot",
  about: "A dot, round or oval; with vary, a dab of the brush.",
  params,
  parts: ["dot"],
  draw({ size, width }, tools) {
    const [rx, ry] = [(size * width) / 2, size / 2];
    if (tools.vary === 0) return { dot: ellipse(0, 0, rx, ry) };
    const scale = tools.stray(1, 0.1);
    const start = tools.random.next();
    const points: number[] = [];
    for (let k = 0; k < KNOTS; k++) {
      const reach = tools.stray(scale, 0.085);
      const [x, y] = heading(start + (k + sway(tools, 0.12)) / KNOTS);
      points.push(x * rx * reach, y * ry * reach);
    }
    return { dot: loop(points) };
  },
});
