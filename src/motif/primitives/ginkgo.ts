import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, stalk included. 8 to 200 mm; default 36 mm. */
  readonly height: LengthParam;
  /** How deep the fan is cleft in the middle. 0 to 1; default 0.5. */
  readonly cleft: NumberParam;
  /** Veins on each side. 0 to 6; default 4. */
  readonly veins: NumberParam;
} = {
  height: length({ about: "Height, stalk included.", min: 8, max: 200, default: 36 }),
  cleft: share({ about: "How deep the fan is cleft in the middle.", default: 0.5 }),
  veins: integer({ about: "Veins on each side.", min: 0, max: 6, default: 4 }),
};

/** A ginkgo leaf: a cleft fan on a long stalk. The origin is the middle of its box. */
export const ginkgo: MotifFactory<typeof params, "leaf" | "stem"> = defineMotif({
  name: "sprigwright/ginkgo",
  about: "A ginkgo leaf: a cleft, wavy fan with fine rays, on a long swinging stalk.",
  params,
  parts: ["leaf", "stem"],
  draw({ height, cleft, veins }, tools) {
    const s = sketch(tools, height / 100);
    const deep = mix(-38, -10, tools.stray(cleft, 0.3));
    const half = (h: number): number[][] => [
      [
        0,
        deep,
        2.4 * h,
        mix(deep, -50, 0.6),
        8 * h,
        -48,
        15 * h,
        -48.5,
        22 * h,
        -43.5,
        30 * h,
        -41.5,
        36 * h,
        -33,
        43 * h,
        -27,
        46 * h,
        -16,
      ],
      [44 * h, -9, 36 * h, -6, 20 * h, 2, 0, 20],
    ];
    const rays: Path[] = [];
    for (let k = 0; k < veins; k++)
      for (const h of [-1, 1]) {
        const [x, y] = heading(h * mix(0.02, 0.165, (k + 0.5) / veins));
        const far = tools.stray(46, 0.07) * (k % 2 === 0 ? 1 : 0.8);
        rays.push(
          s.line([h * 0.6, 12, x * far * 0.5, 14 + y * far * 0.54, x * far, 14 + y * far], 1.5, 1.3, 1.5),
        );
      }
    const left = s.fill(...half(-1));
    const right = s.fill(...half(1));
    return {
      leaf: [left, right],
      stem: [s.line([0, 10, 0.4, 24, 4, 38, 12, 48], 3, 2.3, 2.4, 3.2), ...rays],
    };
  },
});
