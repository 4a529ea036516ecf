import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { walk } from "../builders/chain.ts";
import { sketch } from "../builders/sketch.ts";
import { spline } from "../builders/spline.ts";
import { mix, turned, type Vector } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the whole. 14 to 400 mm; default 60 mm. */
  readonly height: LengthParam;
  /** How far it sways to and fro. 0 to 1; default 0.4. */
  readonly wave: NumberParam;
  /** Blades along the stem, besides the two at its end. 3 to 12; default 6. */
  readonly blades: NumberParam;
} = {
  height: length({ about: "Height of the whole.", min: 14, max: 400, default: 60 }),
  wave: share({ about: "How far it sways to and fro.", default: 0.4 }),
  blades: integer({
    about: "Blades along the stem, besides the two at its end.",
    min: 3,
    max: 12,
    default: 6,
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
    const spine = [-w, 49, w * 0.4, 34, w * 0.9, 18, -w * 0.2, 0, -w * 0.9, -18, -w * 0.1, -30];
    const line = spline(spine);
    const leaf: Path[] = [];
    const seed: Path[] = [];
    const grow = (at: Vector, way: Vector, long: number, hand: number): void => {
      const b = s.at(...at, way, 1, hand < 0);
      const k = long / 30;
      seed.push(b.dot(0.2, -2.8, 2.4));
      const ribbon = [0.2, -3, 3.4, -9, 2.2, -16, 5.4, -22, 5.2, -28, 9.4, -34].map((v) => v * k);
      leaf.push(b.line(ribbon, 1.4, 5 * k, 6.4 * k, 5.6 * k, 3.6 * k, 0.8));
    };
    for (let k = 0; k < blades; k++) {
      const v = k / blades;
      const { at, way } = walk(line, mix(0.12, 1, v));
      const hand = k % 2 === 0 ? 1 : -1;
      grow(at, turned(way, hand * tools.stray(0.115, 0.15)), tools.stray(mix(32, 23, v), 0.08), hand);
    }
    const { at, way } = walk(line, 1);
    grow(at, turned(way, 0.07), 24, 1);
    grow(at, turned(way, -0.08), 20, -1);
    return { leaf, stem: s.line(spine, 2.4, 2, 1.6), seed };
  },
});
