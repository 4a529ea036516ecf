import type { Path } from "../../geometry/path.ts";
import { length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { walk } from "../builders/chain.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { spline } from "../builders/spline.ts";
import { sway } from "../builders/sway.ts";
import { turned } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Width from end to end. 14 to 250 mm; default 46 mm. */
  readonly width: LengthParam;
  /** Thickness of the rope as a share of the width. 0.06 to 0.11; default 0.092. */
  readonly rope: NumberParam;
} = {
  width: length({ about: "Width from end to end.", min: 14, max: 250, default: 46 }),
  rope: number({
    about: "Thickness of the rope as a share of the width.",
    min: 0.06,
    max: 0.11,
    default: 0.092,
  }),
};

/** One rope of the knot: in from the left, around, and out again. The other is its mirror image. */
const ROPE = [
  -46, -8.6, -30, -8.2, -16, -9.4, 0, -15, 14, -19.4, 25, -13, 28, 0, 25, 13, 14, 19.4, 0, 15, -16, 9.4, -30,
  8.2, -46, 8.6,
];

/** A reef knot. The origin is its middle. */
export const knot: MotifFactory<typeof params, "body" | "trim" | "marking"> = defineMotif({
  name: "sprigwright/knot",
  about: "A reef knot of two ropes, over and under, with the lay of their strands.",
  params,
  parts: ["body", "trim", "marking"],
  draw({ width, rope }, tools) {
    const s = sketch(tools, width / 100, 0.8);
    const thick = tools.stray(rope * 100, 0.06);
    const gap = Math.max(0.5, 0.011 * width);
    const slack = sway(tools, 2.4);
    const points = ROPE.map((v, i) =>
      i % 2 === 1 ? v * (1 + slack * 0.02) : v + (i > 5 && i < 20 ? slack * 0.5 : 0),
    );
    const other = points.map((v, i) => (i % 2 === 0 ? -v : v));
    const whole = (p: readonly number[]): Path => s.line(p, thick);
    // The first rope lies over the second where they meet at the sides, the second over the first in the middle.
    const part = (p: readonly number[], from: number, to: number): Path =>
      s.line(p.slice(from * 2, to * 2), thick);
    const first = behind(whole(points), [part(other, 2, 5), part(other, 8, 11)], gap);
    const sides = [part(points, 0, 3), part(points, 10, 13), part(points, 4, 9)];
    const second = behind(whole(other), sides, gap);
    const lay: Path[] = [];
    // Where each rope is seen, in curves of its spine; the rest of it lies under the other.
    const [one, two] = [
      [0.15, 0.6, 1.05, 1.5, 3.9, 4.4, 4.85, 5.3, 5.75],
      [0.1, 0.5, 2, 2.45, 2.9, 3.35, 3.8, 4.3],
    ];
    for (const [p, seen, hand] of [
      [points, one, 1],
      [other, two, -1],
    ] as const) {
      const line = spline(p);
      for (const u of seen.flatMap((v) => [v, 12 - v])) {
        const { at, way } = walk(line, u / 12);
        const t = s.at(...at, turned(way, 0.115 * hand));
        lay.push(t.line([0.6, -thick * 0.36, 0, 0, -0.6, thick * 0.36], 1.15, 1.5, 1.15));
      }
    }
    return { body: first, trim: second, marking: lay };
  },
});
