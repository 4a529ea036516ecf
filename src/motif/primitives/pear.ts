import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, stalk included. 8 to 200 mm; default 38 mm. */
  readonly height: LengthParam;
  /** How round it is: 0 is slender, 1 stout. 0 to 1; default 0.5. */
  readonly girth: NumberParam;
  /** Leaves at the stalk. 0 to 2; default 1. */
  readonly leaves: NumberParam;
} = {
  height: length({ about: "Height, stalk included.", min: 8, max: 200, default: 38 }),
  girth: share({ about: "How round it is: 0 is slender, 1 stout.", default: 0.5 }),
  leaves: integer({ about: "Leaves at the stalk.", min: 0, max: 2, default: 1 }),
};

/** A pear with its stalk. The origin is half way up. */
export const pear: MotifFactory<typeof params, "stem" | "leaf" | "fruit" | "highlight"> = defineMotif({
  name: "sprigwright/pear",
  about: "A pear that leans a little, with a leaf at its stalk, a light on its cheek and a few freckles.",
  params,
  parts: ["stem", "leaf", "fruit", "highlight"],
  draw({ height, girth, leaves }, tools) {
    const s = sketch(tools, height / 100);
    const w = mix(0.84, 1.16, tools.stray(girth, 0.3));
    const p = s.at(-3, 9);
    const fruit = p.fill(
      [4, -37, 11 * w, -33, 14 * w, -23, 17 * w, -9, 26 * w, 5, 30 * w, 20, 23 * w, 35, 9 * w, 40],
      [6 * w, 39.2, -4 * w, 39, -8 * w, 40.4],
      [-23 * w, 35, -31 * w, 20, -27 * w, 4, -17 * w, -9, -10 * w, -21, -6 * w, -32, 4, -37],
    );
    const leaf = [
      [0.2, 38],
      [-0.17, 28],
    ]
      .slice(0, leaves)
      .map(([turn, long]) => {
        const l = s.at(3, -36, heading(tools.stray(turn!, 0.15)), long! / 30, turn! < 0);
        return behind(
          l.fill([0, 1, 6, -5, 8, -15, 2, -30], [-5, -24, -7, -13, -4, -4, 0, 1]),
          l.line([0.2, -1, 1.6, -10, 1.8, -21], 1.5, 0.9),
        );
      });
    const light = p.line([-20 * w, 6, -23.6 * w, 17, -19 * w, 28], 1.6, 5, 1.8);
    const freckle = [
      [8, -4],
      [14, 8],
      [3, 10],
      [19, 18],
      [9, 22],
      [14, 30],
      [1, 29],
    ].map(([x, y]) => p.dot((x! + sway(tools, 1.5)) * w, y! + sway(tools, 1.5), 1));
    return {
      stem: s.line([0, -24, 0.6, -34, 3, -42, 8, -48], 2.6, 2.4, 4),
      leaf,
      fruit,
      highlight: [light, ...freckle],
    };
  },
});
