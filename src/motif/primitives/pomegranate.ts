import type { Path } from "../../geometry/path.ts";
import { integer, length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, crown included. 8 to 200 mm; default 40 mm. */
  readonly height: LengthParam;
  /** How far it has split open. 0.2 to 1; default 0.6. */
  readonly split: NumberParam;
  /** Points of the crown. 3 to 6; default 4. */
  readonly crown: NumberParam;
} = {
  height: length({ about: "Height, crown included.", min: 8, max: 200, default: 40 }),
  split: number({ about: "How far it has split open.", min: 0.2, max: 1, default: 0.6 }),
  crown: integer({ about: "Points of the crown.", min: 3, max: 6, default: 4 }),
};

/** A pomegranate that has split. The origin is half way up. */
export const pomegranate: MotifFactory<typeof params, "fruit" | "flesh" | "seed" | "highlight"> = defineMotif(
  {
    name: "sprigwright/pomegranate",
    about: "A pomegranate under its crown, split open to show the seeds in their pith.",
    params,
    parts: ["fruit", "flesh", "seed", "highlight"],
    draw({ height, split, crown }, tools) {
      const s = sketch(tools, height / 100, 1.2);
      const ball = s.twin({}, [0, -21, 9, -23, 24, -19, 37, -3, 38, 17, 28, 37, 11, 47, 0, 48]);
      const wide = 17;
      const points: number[][] = [[10.2, -13, 9, -24, 10.6, -33, wide, -44]];
      for (let k = 1; k < crown; k++) {
        const [x, v] = [wide - (2 * wide * (k - 0.5)) / (crown - 1), wide - (2 * wide * k) / (crown - 1)];
        const top = -44 - 5 * (1 - (v * v) / (wide * wide));
        points.push([x * 0.4, -32], [v, top]);
      }
      points.push([-10.6, -33, -9, -24, -10.2, -13]);
      const o = tools.stray(split, 0.15);
      const open = s.fill(
        [4, -15],
        [9 * o + 6, -10],
        [15 * o + 3, -4, 21 * o + 3, 9, 19 * o + 3, 22, 10 * o + 3, 34],
        [5, 40],
        [-4 * o, 36, -8 * o - 3, 24, -9 * o - 3, 8, -6 * o - 2, -5, 4, -15],
      );
      const seed: Path[] = [];
      const rows = [-6, 1.4, 8.8, 16.2, 23.6, 31];
      rows.forEach((y, row) => {
        const v = (y - 12) / 27;
        const half = (14 * o + 2.6) * (1 - v * v * 0.9) - 2.4;
        const count = Math.max(1, Math.round(half / 2.8));
        for (let k = 0; k < count; k++) {
          const x = 6 * o + (count === 1 ? (row % 2) * 2 - 0.6 : ((2 * k) / (count - 1) - 1) * (half - 1.6));
          const d = s.at(x, y, heading(sway(tools, 0.1) + (k - (count - 1) / 2) * 0.06));
          seed.push(d.twin({}, [0, -3.3, 1.9, -1.8, 2.7, 1, 0, 3.3]));
        }
      });
      const light = s.line([-24, -6, -29, 8, -26, 23], 1.6, 4.6, 1.6);
      return { fruit: [ball, s.fill(...points)], flesh: open, seed, highlight: [light, s.dot(-21, 30, 1.7)] };
    },
  },
);
