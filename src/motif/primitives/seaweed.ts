import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { walk } from "../builders/chain.ts";
import { sketch } from "../builders/sketch.ts";
import { spline } from "../builders/spline.ts";
import { mix, turned, type Vector } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height. 14 to 400 mm; default 60 mm. */
  readonly height: LengthParam;
  /** How far it sways to and fro. 0 to 1; default 0.4. */
  readonly wave: NumberParam;
  /** Blades along the stem, besides the two at its end. 3 to 12; default 7. */
  readonly blades: NumberParam;
} = {
  height: length({ about: "Height.", min: 14, max: 400, default: 60 }),
  wave: share({ about: "How far it sways to and fro.", default: 0.4 }),
  blades: integer({
    about: "Blades along the stem, besides the two at its end.",
    min: 3,
    max: 12,
    default: 7,
  }),
};

/** Kelp in the current. The origin is half way up. */
export const seaweed: MotifFactory<typeof params, "leaf" | "stem" | "seed"> = defineMotif({
  name: "sprigwright/seaweed",
  about: "Kelp: a swaying stem whose rippled blades stream from round bladders.",
  params,
  parts: ["leaf", "stem", "seed"],
  draw({ height, wave, blades }, tools) {
    const s = sketch(tools, height / 100);
    const w = tools.stray(mix(2, 11, wave), 0.25);
    const spine = [-w, 49, w * 0.4, 34, w * 0.9, 18, -w * 0.2, 0, -w * 0.9, -16, -w * 0.1, -28];
    const line = spline(spine);
    const leaf: Path[] = [];
    const seed: Path[] = [];
    const grow = (at: Vector, way: Vector, long: number, hand: number): void => {
      const b = s.at(...at, way, 1, hand < 0);
      const k = long / 30;
      seed.push(b.dot(0.2, -2.6, 2.1));
      leaf.push(
        b.fill(
          [-0.8, -4, 2.6 * k, -10 * k, 5.2 * k, -15 * k, 4.4 * k, -20 * k, 6 * k, -25 * k, 9 * k, -31 * k],
          [2 * k, -28 * k, -0.4 * k, -22 * k, 0.6 * k, -17 * k, -2.6 * k, -11 * k, -0.8, -4],
        ),
      );
    };
    for (let k = 0; k < blades; k++) {
      const v = k / blades;
      const { at, way } = walk(line, mix(0.1, 0.97, v));
      const hand = k % 2 === 0 ? 1 : -1;
      grow(at, turned(way, hand * tools.stray(0.085, 0.15)), tools.stray(mix(36, 26, v), 0.08), hand);
    }
    const { at, way } = walk(line, 1);
    grow(at, turned(way, 0.06), 24, 1);
    grow(at, turned(way, -0.05), 21, -1);
    return { leaf, stem: s.line(spine, 2.4, 2, 1.6), seed };
  },
});
