import type { Path } from "../../geometry/path.ts";
import { length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the whole. 10 to 250 mm; default 42 mm. */
  readonly height: LengthParam;
  /** How stout it is. 0 to 1; default 0.5. */
  readonly weight: NumberParam;
  /** How far the rope swings out. 0 to 1; default 0.5. */
  readonly slack: NumberParam;
} = {
  height: length({ about: "Height of the whole.", min: 10, max: 250, default: 42 }),
  weight: share({ about: "How stout it is.", default: 0.5 }),
  slack: share({ about: "How far the rope swings out.", default: 0.5 }),
};

/** An anchor with a rope around its shank. The origin is half way up. */
export const anchor: MotifFactory<typeof params, "body" | "trim"> = defineMotif({
  name: "sprigwright/anchor",
  about: "An anchor with curved flukes, its rope wound around the shank over and under.",
  params,
  parts: ["body", "trim"],
  draw({ height, weight, slack }, tools) {
    const s = sketch(tools, height / 100);
    const k = mix(0.75, 1.3, tools.stray(weight, 0.2));
    const eye = behind(
      s.loop([0, -49.5, 7.6, -42, 0, -34.5, -7.6, -42]),
      s.loop([0, -49.5 + 3.4 * k, 7.6 - 3.4 * k, -42, 0, -34.5 - 3.4 * k, -7.6 + 3.4 * k, -42]),
    );
    const shank = s.line([0, -36, 0, 4, 0, 43], 4.8 * k, 5.8 * k, 8 * k);
    const stock = [
      s.line([-21, -25, 0, -26.4, 21, -25], 4 * k, 5.6 * k, 4 * k),
      s.dot(-22, -25, 3.7 * k),
      s.dot(22, -25, 3.7 * k),
    ];
    const arms = s.line(
      [-32.5, 19, -26, 32, -14, 41, 0, 44, 14, 41, 26, 32, 32.5, 19],
      ...[4, 5.6, 7, 9, 7, 5.6, 4].map((w) => w * k),
    );
    const fluke = (h: number): Path =>
      s.fill(
        [39 * h, 3, 40.5 * h, 15, 44.5 * h, 25],
        [36 * h, 23, 30 * h, 24.6, 22.5 * h, 26.6],
        [29 * h, 19, 35 * h, 12, 39 * h, 3],
      );
    const point = s.fill([-6 * k, 42, 0, 44, 6 * k, 42], [3 * k, 46, 0, 50], [-3 * k, 46, -6 * k, 42]);
    const body = [eye, shank, ...stock, arms, fluke(1), fluke(-1), point];
    // The rope: from the eye over the stock, across the shank in front, behind it, and in front again.
    const r = tools.stray(mix(0.75, 1.2, slack), 0.12);
    const rope = [
      4,
      -43,
      15 * r,
      -38,
      18 * r,
      -27,
      10 * r,
      -17,
      -2,
      -9.5,
      -13 * r,
      -3,
      -14 * r,
      6,
      -3,
      12,
      10 * r,
      16.4,
      11 * r,
      25,
      0,
      28.6,
      -10 * r,
      28,
      -13 * r,
      21,
    ];
    const gap = 1.6 * s.unit;
    const strand = s.line(rope, 3.4, 3.4, 3.4, 3, 2.6);
    const front = [s.line(rope.slice(0, 12), 3.4), s.line(rope.slice(18), 3)];
    const back = s.line([0, 6, 0, 18], 6 * k);
    return { body: behind(body, front, gap), trim: behind(strand, back, gap) };
  },
});
