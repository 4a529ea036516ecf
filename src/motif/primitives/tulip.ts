import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, stem included. 12 to 300 mm; default 52 mm. */
  readonly height: LengthParam;
  /** How far the outer petals lean out: 0 is a closed cup, 1 is wide open. 0 to 1; default 0.4. */
  readonly open: NumberParam;
  /** Leaves at the foot. 0 to 2; default 2. */
  readonly leaves: NumberParam;
} = {
  height: length({ about: "Height, stem included.", min: 12, max: 300, default: 52 }),
  open: share({
    about: "How far the outer petals lean out: 0 is a closed cup, 1 is wide open.",
    default: 0.4,
  }),
  leaves: integer({ about: "Leaves at the foot.", min: 0, max: 2, default: 2 }),
};

/** A tulip in side view with its leaves. The origin is half way up. */
export const tulip: MotifFactory<typeof params, "leaf" | "stem" | "petal" | "marking"> = defineMotif({
  name: "sprigwright/tulip",
  about: "A tulip in side view: five petals with flames, on a stem between two long leaves.",
  params,
  parts: ["leaf", "stem", "petal", "marking"],
  draw({ height, open, leaves }, tools) {
    const s = sketch(tools, height / 100);
    const o = tools.stray(open, 0.5);
    const gap = 1.2 * s.unit;
    const front = s.twin({ tip: true }, [0, -38, 9, -30, 13.5, -17, 10.5, -3, 0, 3]);
    const side = (h: number): Path =>
      s.fill(
        [0, 1.6, 13 * h, -1, mix(18, 23, o) * h, -15, mix(17, 25, o) * h, -33, mix(13, 28, o) * h, -49],
        [mix(7, 15, o) * h, -38, 6 * h, -18, 0, 1.6],
      );
    const sides = [side(-1), side(1)];
    const back = [-1, 1].map((h) =>
      s.fill([0, -14, 9 * h, -28, mix(6, 9, o) * h, -47], [0, -37, -4 * h, -26, 0, -14]),
    );
    const petal = [behind(back, [front, ...sides], gap), behind(sides, front, gap), front];
    const flame = (x: number, top: number): Path => s.line([x * 0.4, -2, x * 0.9, -10, x, top], 1.8, 1);
    const blade = (h: number, top: number, out: number): Path =>
      s.fill(
        [-1 * h, 48, 9 * h, 38, (out + 2) * h, 20, (out + 7) * h, top],
        [(out - 6) * h, top + 11, 4 * h, 26, -1 * h, 48],
      );
    const leaf = [blade(1, tools.stray(1, 3), 17), blade(-1, tools.stray(11, 0.4), 15)].slice(0, leaves);
    const stem = s.line([1, 49, 0.2, 36, -0.6, 18, 0, 0], 3, 2.4, 2.4);
    const marking = [flame(-4.4, -17), flame(0, -24), flame(4.4, -17)];
    return { leaf: leaf.length > 0 ? behind(leaf, stem, gap) : [], stem, petal, marking };
  },
});
