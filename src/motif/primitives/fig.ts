import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the whole. 6 to 200 mm; default 32 mm. */
  readonly height: LengthParam;
  /** How broad it is: 0 is slender, 1 stout. 0 to 1; default 0.5. */
  readonly girth: NumberParam;
  /** Seeds in the ring around the heart. 8 to 24; default 15. */
  readonly seeds: NumberParam;
} = {
  height: length({ about: "Height of the whole.", min: 6, max: 200, default: 32 }),
  girth: share({ about: "How broad it is: 0 is slender, 1 stout.", default: 0.5 }),
  seeds: integer({ about: "Seeds in the ring around the heart.", min: 8, max: 24, default: 15 }),
};

/** A fig cut in half. The origin is half way up. */
export const fig: MotifFactory<typeof params, "fruit" | "flesh" | "core" | "seed"> = defineMotif({
  name: "sprigwright/fig",
  about: "Half a fig: skin, pale flesh, a heart of pulp with its hollow, and a ring of seeds.",
  params,
  parts: ["fruit", "flesh", "core", "seed"],
  draw({ height, girth, seeds }, tools) {
    const s = sketch(tools, height / 100, 1.2);
    const w = mix(0.86, 1.14, tools.stray(girth, 0.3));
    const fruit = s.fill(
      [-5, -49, 0.5, -50, 4, -48],
      [
        6,
        -38,
        14 * w,
        -24,
        29 * w,
        -6,
        37 * w,
        16,
        30 * w,
        36,
        13 * w,
        47,
        0,
        49,
        -14 * w,
        47,
        -31 * w,
        36,
        -37 * w,
        15,
        -29 * w,
        -6,
        -15 * w,
        -24,
        -7,
        -38,
        -5,
        -49,
      ],
    );
    const flesh = s.twin({ tip: true }, [0, -31, 12 * w, -15, 25 * w, -1, 31 * w, 17, 24 * w, 34, 0, 43]);
    const pulp = s.twin({ tip: true }, [0, -15, 10 * w, -4, 19.5 * w, 7, 22.5 * w, 19, 16 * w, 30, 0, 35]);
    const hollow = s.twin({ tip: true }, [0, 4, 3.4 * w, 12, 4.4 * w, 18, 0, 23]);
    const seed: Path[] = [];
    for (let k = 0; k < seeds; k++) {
      const turn = (k + 0.5 + sway(tools, 0.2)) / seeds;
      const [x, y] = heading(turn);
      const out = tools.stray(k % 2 === 0 ? 1 : 0.78, 0.07);
      const rx = (y < 0 ? 12 : 15) * w * out;
      const d = s.at(x * rx, 16.5 + y * (y < 0 ? 17.5 : 12) * out, heading(turn));
      seed.push(d.line([0, -1.6, 0, 1.6], 1.9, 2.5));
    }
    return { fruit, flesh, core: behind(pulp, hollow), seed };
  },
});
