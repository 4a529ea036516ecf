import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Width of the whole. 10 to 300 mm; default 46 mm. */
  readonly width: LengthParam;
  /** How far the crest curls over. 0 to 1; default 0.5. */
  readonly curl: NumberParam;
  /** Lines along the back of the wave. 0 to 4; default 3. */
  readonly lines: NumberParam;
} = {
  width: length({ about: "Width of the whole.", min: 10, max: 300, default: 46 }),
  curl: share({ about: "How far the crest curls over.", default: 0.5 }),
  lines: integer({ about: "Lines along the back of the wave.", min: 0, max: 4, default: 3 }),
};

/** A breaking wave. The origin is the middle of its box. */
export const wave: MotifFactory<typeof params, "body" | "trim" | "marking"> = defineMotif({
  name: "sprigwright/wave",
  about: "A breaking wave whose crest curls over, with foam, flying drops and lines along its back.",
  params,
  parts: ["body", "trim", "marking"],
  draw({ width, curl, lines }, tools) {
    const s = sketch(tools, width / 100, 0.9);
    const c = tools.stray(mix(-3, 5, curl), 0.4);
    const body = s.fill(
      [-50, 33, -38, 14, -24, -10, -4, -26, 18, -28, 29, -21],
      [19, -14.5, 10, -12.5, 0, -6, -3.4, 5, 2, 17, 17, 26.5, 35, 29.4, 50, 29],
      [48.6, 34, 24, 37.4, -10, 38, -50, 33],
    );
    const foam = s.fill(
      [-20, -15, -4, -28, 16, -32, 33, -25, 42 + c, -10, 41 + c, 3, 33 + c, 12],
      [30 + c, 16, 24 + c, 14, 24.5 + c, 10],
      [19 + c, 12, 15 + c, 8, 18 + c, 4],
      [25 + c, 5, 30 + c, 1, 31 + c, -4],
      [26 + c, -4, 25 + c, -10, 29 + c, -12],
      [25, -18, 20, -16, 17, -21],
      [12, -17, 7, -18, 6, -23],
      [-2, -18, -10, -20, -20, -15],
    );
    const marking: Path[] = [];
    for (let k = 0; k < lines; k++) {
      const v = k * 6.4;
      marking.push(
        s.line(
          [-37 + v * 1.5, 27 + v * 0.15, -24 + v * 0.9, 8 + v * 0.7, -12 + v * 0.35, -9 + v * 0.6 + k],
          1,
          2,
          1.1,
        ),
      );
    }
    const drops = [
      [46, -27, 2.3],
      [38, -36, 1.6],
      [22, -39, 2],
    ].map(([x, y, r]) => s.dot(x! + c + sway(tools, 2), y! + sway(tools, 2), r!));
    return { body: behind(body, foam, 1.2 * s.unit), trim: [foam, ...drops], marking };
  },
});
