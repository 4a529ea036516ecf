import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, stalk included. 8 to 200 mm; default 34 mm. */
  readonly height: LengthParam;
  /** How broad its shoulders are. 0 to 1; default 0.5. */
  readonly girth: NumberParam;
  /** Rows of seeds. 3 to 6; default 5. */
  readonly rows: NumberParam;
} = {
  height: length({ about: "Height, stalk included.", min: 8, max: 200, default: 34 }),
  girth: share({ about: "How broad its shoulders are.", default: 0.5 }),
  rows: integer({ about: "Rows of seeds.", min: 3, max: 6, default: 5 }),
};

/** A strawberry, hanging. The origin is half way up. */
export const strawberry: MotifFactory<typeof params, "fruit" | "seed" | "leaf" | "stem"> = defineMotif({
  name: "sprigwright/strawberry",
  about: "A strawberry with drop-shaped seeds under a curling calyx, hanging from its stalk.",
  params,
  parts: ["fruit", "seed", "leaf", "stem"],
  draw({ height, girth, rows }, tools) {
    const s = sketch(tools, height / 100, 1.2);
    const w = mix(0.88, 1.14, tools.stray(girth, 0.3));
    const fruit = s.twin({}, [0, -18, 12 * w, -21, 27 * w, -17, 34 * w, -3, 28 * w, 17, 14 * w, 38, 0, 48]);
    const seed: Path[] = [];
    for (let row = 0; row < rows; row++) {
      const y = mix(-2, 37, (row + 0.2) / (rows - 0.3));
      const half = mix(26, 6, (row / (rows - 1)) * mix(1, row / (rows - 1), 0.4)) * w;
      const count = Math.max(1, Math.round(half / 6.2) + (row % 2));
      for (let k = 0; k < count; k++) {
        const x = count === 1 ? 0 : ((2 * k) / (count - 1) - 1) * half * (row % 2 === 0 ? 0.98 : 0.84);
        const d = s.at(x + sway(tools, 0.8), y + sway(tools, 0.8) - Math.abs(x) * 0.05, heading(-x * 0.003));
        seed.push(d.twin({ tip: true }, [0, -3, 1.7, 0.6, 0, 2.5]));
      }
    }
    const sepal = (turn: number, long: number): Path => {
      const l = s.at(0, -22, heading(tools.stray(turn, 0.06)), long / 20, turn < 0);
      return l.fill([-3.6, 2, -4.6, -6, -2.6, -13, 3, -20], [3, -12, 4.4, -5, 3.4, 2]);
    };
    const leaf = [
      sepal(0.27, 25),
      sepal(-0.27, 25),
      sepal(0.385, 17),
      sepal(-0.385, 17),
      sepal(0.5, 15),
      sepal(0.13, 15),
      sepal(-0.13, 15),
    ];
    return {
      fruit: behind(fruit, leaf, 1.3 * s.unit),
      seed: behind(seed, leaf, 1.3 * s.unit),
      leaf,
      stem: s.line([0, -23, 0.6, -32, 4, -41, 11, -48], 3, 2.8, 3.6),
    };
  },
});
