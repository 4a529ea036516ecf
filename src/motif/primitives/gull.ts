import type { Path } from "../../geometry/path.ts";
import { length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind, within } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Width from wing tip to wing tip. 10 to 300 mm; default 48 mm. */
  readonly width: LengthParam;
  /** How high the wings are raised. 0 to 1; default 0.5. */
  readonly lift: NumberParam;
} = {
  width: length({ about: "Width from wing tip to wing tip.", min: 10, max: 300, default: 48 }),
  lift: share({ about: "How high the wings are raised.", default: 0.5 }),
};

/** A gull on the wing. The origin is the middle of its box. */
export const gull: MotifFactory<typeof params, "body" | "trim" | "marking"> = defineMotif({
  name: "sprigwright/gull",
  about: "A gull on the wing, with dark wing tips, layered feathers and a bright bill.",
  params,
  parts: ["body", "trim", "marking"],
  draw({ width, lift }, tools) {
    const s = sketch(tools, width / 100, 0.8);
    const g = s.at(-1, 14);
    const l = mix(0.72, 1.22, tools.stray(lift, 0.25));
    const bird = g.fill(
      [37, 2, 34, -3.4, 28, -5, 21, -3, 10, 0, -6, 3, -22, 6.4, -36, 7],
      [-40, 11.5],
      [-35, 14, -20, 16.4, -2, 17.6, 14, 14, 25, 8.6, 33, 6, 37, 2],
    );
    const near = g.fill(
      [17, 1, 15, -11 * l, 6, -24 * l, -10, -33 * l, -29, -37 * l, -48, -38 * l],
      [-40, -30.5 * l, -30, -24 * l, -22, -16 * l, -14, -6 * l, -4, 4, 7, 8, 15, 6, 17, 1],
    );
    const far = g.fill(
      [12, 0, 17, -14 * l, 28, -27 * l, 50, -36 * l],
      [44, -28 * l, 37, -19 * l, 29, -8 * l, 20, 1],
      [15, 3, 12, 0],
    );
    const bill = g.fill([34.6, 0.4, 40, 1, 44, 4.4], [39, 5.4, 33.6, 4.8]);
    const gap = 1.15 * s.unit;
    const mask = (x: number, h: number): Path =>
      g.fill(
        [x, -70, x + 5 * h, -36 * l, x + 1 * h, -10 * l],
        [x - 60 * h, -10],
        [x - 60 * h, -70],
        [x, -70],
      );
    const tips = [within(near, mask(-27, 1)), within(far, mask(36, -1))];
    const feather = (points: number[]): Path => g.line(points, 0.9, 1.5, 0.9);
    const marking = [
      feather([-22, -28 * l, -8, -22 * l, 2, -12 * l, 7, 1]),
      feather([-17, -20 * l, -8, -14 * l, -1, -4]),
      feather([31, -19 * l, 26, -12.5 * l, 21, -4]),
      g.dot(30.6, 0.2, 1.15),
    ];
    const wings = behind(far, near, gap);
    const body = [behind(bird, near, gap), behind([near, wings], tips, gap * 0.8)];
    return { body: behind(body, bill, gap * 0.5), trim: [...tips, bill], marking };
  },
});
