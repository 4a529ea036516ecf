import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the whole. 6 to 200 mm; default 36 mm. */
  readonly height: LengthParam;
  /** How far its whorls bulge. 0 to 1; default 0.5. */
  readonly bulge: NumberParam;
  /** Ribs on the lowest whorl. 0 to 7; default 5. */
  readonly ribs: NumberParam;
} = {
  height: length({ about: "Height of the whole.", min: 6, max: 200, default: 36 }),
  bulge: share({ about: "How far its whorls bulge.", default: 0.5 }),
  ribs: integer({ about: "Ribs on the lowest whorl.", min: 0, max: 7, default: 5 }),
};

/** A whelk's shell. The origin is half way up. */
export const whelk: MotifFactory<typeof params, "body" | "trim" | "marking"> = defineMotif({
  name: "sprigwright/whelk",
  about: "A whelk's shell: winding whorls with ribs, and the lip of its mouth.",
  params,
  parts: ["body", "trim", "marking"],
  draw({ height, bulge, ribs }, tools) {
    const s = sketch(tools, height / 100, 1.3);
    const c = s.at(0, 0, heading(0.035));
    const b = mix(0.3, 1.7, tools.stray(bulge, 0.3));
    const body = c.fill(
      [0, -50, 3.6 + b, -45, 5.6, -40],
      [8 + 1.7 * b, -36, 11, -29],
      [15 + 2.4 * b, -23, 19, -13],
      [26 + 3 * b, -5, 30 + 3 * b, 8, 26, 23, 14, 37, 9, 47],
      [6, 50, 1, 49],
      [-3, 38, -14, 29, -22 - 2.4 * b, 16, -24 - 3 * b, 4, -17, -8],
      [-15 - 2.4 * b, -17, -10, -24],
      [-8 - 1.8 * b, -31, -5, -36.5],
      [-3.6 - b, -43, 0, -50],
    );
    const mouth = c.fill([13, -1, 23, 2, 25, 14, 18, 28, 8, 39, 3.4, 44], [1, 38, 3, 20, 6, 8, 13, -1]);
    const suture = (x: number, y: number, u: number, v: number): Path =>
      c.line([x + 0.4, y, (x + u) / 2 - 1, (y + v) / 2 + 2.8, u - 0.6, v], 1.4, 2, 1.4);
    const marking = [suture(-17, -8, 19, -13), suture(-10, -24, 11, -29), suture(-5, -36.5, 5.6, -40)];
    for (let k = 0; k < ribs; k++) {
      const v = (k + 0.6) / ribs;
      const y = mix(0, 27, v) + sway(tools, 1);
      const x = mix(-21.5, -9, v * v) - b * (1 - v);
      marking.push(c.line([x, y, mix(x, 3, 0.5), y + 4, mix(9, 0.6, v), y + mix(-1, 4, v)], 1.3, 2.1, 1.2));
    }
    return { body, trim: mouth, marking: behind(marking, mouth, 0.9 * s.unit) };
  },
});
