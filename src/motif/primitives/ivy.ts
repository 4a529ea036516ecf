import type { Path } from "../../geometry/path.ts";
import { length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, stalk included. 8 to 200 mm; default 34 mm. */
  readonly height: LengthParam;
  /** How deep the leaf is cut between its five lobes. 0 to 1; default 0.5. */
  readonly cut: NumberParam;
} = {
  height: length({ about: "Height, stalk included.", min: 8, max: 200, default: 34 }),
  cut: share({ about: "How deep the leaf is cut between its five lobes.", default: 0.5 }),
};

/** An ivy leaf with its veins cut through. The origin is the middle of its box. */
export const ivy: MotifFactory<typeof params, "leaf" | "stem"> = defineMotif({
  name: "sprigwright/ivy",
  about: "An ivy leaf: five lobes, five veins, and a curling stalk.",
  params,
  parts: ["leaf", "stem"],
  draw({ height, cut }, tools) {
    const s = sketch(tools, height / 100);
    const d = tools.stray(cut, 0.3);
    const bay = (x: number, y: number): number[] => [mix(x * 1.16, x * 0.84, d), mix(y - 2, y + 2, d)];
    const half = [
      [0, -50, 6, -40, 13, -29, ...bay(17, -17)],
      [25, -20, 36, -25, 46, -25],
      [42, -15, 35, -6, ...bay(28, 0)],
      [31, 6, 36, 14, 39, 23],
      [30, 24, 19, 27, 8, 22, 0, 12],
    ];
    const vein = (x: number, y: number, bow: number, w = 1.7): Path =>
      s.line([0, 14, x * 0.45 - bow * 0.3, 14 + (y - 14) * 0.5 + bow, x, y], 2.4, w, 1.1);
    const stalk = s.line([0, 12, 1, 24, 6, 38, 16, 47], 2.8, 2.4, 3);
    return {
      leaf: s.twin({ tip: true, foot: true }, ...half),
      stem: [
        vein(0, -38, 0),
        vein(36, -20, 1.5),
        vein(-36, -20, 1.5),
        vein(29, 18, -1.6),
        vein(-29, 18, -1.6),
        stalk,
      ],
    };
  },
});
