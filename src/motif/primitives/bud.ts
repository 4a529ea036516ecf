import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, stem included. 12 to 300 mm; default 50 mm. */
  readonly height: LengthParam;
  /** How plump the bud is: 0 is slender, 1 about to open. 0 to 1; default 0.5. */
  readonly plump: NumberParam;
  /** Leaves on the stem. 0 to 2; default 2. */
  readonly leaves: NumberParam;
} = {
  height: length({ about: "Height, stem included.", min: 12, max: 300, default: 50 }),
  plump: share({ about: "How plump the bud is: 0 is slender, 1 about to open.", default: 0.5 }),
  leaves: integer({ about: "Leaves on the stem.", min: 0, max: 2, default: 2 }),
};

/** A rose bud on its stem. The origin is half way up. */
export const bud: MotifFactory<typeof params, "stem" | "petal" | "leaf"> = defineMotif({
  name: "sprigwright/bud",
  about: "A rose bud: petals wrapped around each other in curling sepals, on a leafy stem.",
  params,
  parts: ["stem", "petal", "leaf"],
  draw({ height, plump, leaves }, tools) {
    const s = sketch(tools, height / 100);
    const b = s.at(3, -8, heading(0.03), 1.22);
    const w = mix(0.8, 1.2, tools.stray(plump, 0.4));
    const wrap = b.fill(
      [0, 8, 11 * w, 2, 15 * w, -12, 9.5 * w, -25],
      [2 * w, -15, -9 * w, -6, -8 * w, 6, 0, 8],
    );
    const back = b.fill(
      [0, 8, -10 * w, 4, -15 * w, -9, -10.5 * w, -24],
      [-2 * w, -22, 5 * w, -14, 8 * w, -2, 0, 8],
    );
    const heart = b.fill(
      [-9 * w, -18, -8 * w, -27, -1 * w, -36],
      [6 * w, -31, 9.5 * w, -25],
      [6 * w, -10, -4 * w, -8, -9 * w, -18],
    );
    const gap = 1.1 * s.unit;
    const over = behind(back, wrap, gap);
    const petal = [behind(heart, [wrap, back], gap), over, wrap];
    const sepal = (h: number, out: number, up: number): Path =>
      b.fill([0, 13, 7 * h, 10.5, out * 0.8 * h, 4, out * h, up], [(out - 5.4) * h, -0.4, 5 * h, 1.6, 0, 4]);
    const cup = b.twin({}, [0, 5, 5, 6, 7, 10, 4, 15, 0, 17]);
    const blade = (x: number, y: number, turn: number, long: number): Path[] => {
      const l = s.at(x, y, heading(turn), long / 20);
      const rib = l.line([0, -4.6, 0.5, -9, 0, -15.4], 1, 0.7);
      return [behind(l.fill([0, 1, 5, -4, 5.4, -11, 0.6, -20], [-4.8, -12, -5, -4, 0, 1]), rib)];
    };
    const twigs = [
      [1.8, 27, 0.17, 24],
      [-0.2, 36, -0.15, 22],
    ] as const;
    const leaf = twigs
      .slice(0, leaves)
      .flatMap(([x, y, turn, long]) => blade(x, y, tools.stray(turn, 0.15), tools.stray(long, 0.08)));
    return {
      stem: [s.line([-3, 49, 0, 34, 2, 24, 1.8, 8], 2.2, 1.8, 1.8)],
      petal,
      leaf: [
        cup,
        sepal(1, 17 * w, -6),
        sepal(-1, 17 * w, -3),
        b.fill([-4, 9, -4, 2, 1, -7], [4, 1, 4, 9]),
        ...leaf,
      ],
    };
  },
});
