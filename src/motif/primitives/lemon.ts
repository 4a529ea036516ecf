import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Width, leaf included. 8 to 200 mm; default 40 mm. */
  readonly width: LengthParam;
  /** How round it is: 0 is slender, 1 nearly a ball. 0 to 1; default 0.45. */
  readonly girth: NumberParam;
  /** Leaves on the twig. 1 to 2; default 2. */
  readonly leaves: NumberParam;
} = {
  width: length({ about: "Width, leaf included.", min: 8, max: 200, default: 40 }),
  girth: share({ about: "How round it is: 0 is slender, 1 nearly a ball.", default: 0.45 }),
  leaves: integer({ about: "Leaves on the twig.", min: 1, max: 2, default: 2 }),
};

/** A lemon on its twig, aslant. The origin is the middle of its box. */
export const lemon: MotifFactory<typeof params, "leaf" | "stem" | "fruit" | "highlight"> = defineMotif({
  name: "sprigwright/lemon",
  about: "A lemon lying aslant, with its nipple, pores and a light, under leaves on a bit of twig.",
  params,
  parts: ["leaf", "stem", "fruit", "highlight"],
  draw({ width, girth, leaves }, tools) {
    const s = sketch(tools, width / 100);
    const w = mix(0.84, 1.12, tools.stray(girth, 0.3));
    const f = s.at(17.6, 14.6, heading(tools.stray(-0.13, 0.1)));
    const fruit = f.fill(
      [-5, -37, 0, -35.5, 5, -37],
      [10, -33, 22 * w, -22, 27 * w, -3, 23 * w, 16, 12 * w, 28],
      [
        8,
        32,
        6.5,
        37,
        1,
        41,
        -4.5,
        38,
        -8,
        31.5,
        -13 * w,
        27,
        -24 * w,
        14,
        -27 * w,
        -4,
        -21 * w,
        -23,
        -9,
        -33,
        -5,
        -37,
      ],
    );
    const leaf = [
      [-0.2, 46],
      [0.19, 37],
    ]
      .slice(0, leaves)
      .map(([turn, long]) => {
        const l = f.at(-1, -38, heading(tools.stray(turn!, 0.12)), long! / 40, turn! > 0);
        return behind(
          l.fill([0, 1, 7, -6, 10, -19, 5, -32, -3, -41], [-9, -30, -12, -17, -7, -6, 0, 1]),
          l.line([0, -10, 0.4, -18, -1.2, -30], 1.8, 1.1),
        );
      });
    const light = f.line([-17.5 * w, -13, -20 * w, -2, -17 * w, 10], 1.8, 4.4, 1.8);
    const pores = [
      [9, -22],
      [17, -12],
      [6, -9],
      [18, 3],
      [10, 8],
      [1, 3],
      [5, 19],
      [13, 18],
    ].map(([x, y]) => f.dot((x! + sway(tools, 1.5)) * w, y! + sway(tools, 1.5), 1.05));
    return {
      leaf: behind(leaf, fruit, 1.4 * s.unit),
      stem: f.line([-0.5, -33, -0.6, -41, 3, -48], 4, 2.8, 4),
      fruit,
      highlight: [light, ...pores],
    };
  },
});
