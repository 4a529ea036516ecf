import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { walk } from "../builders/chain.ts";
import { sketch } from "../builders/sketch.ts";
import { spline } from "../builders/spline.ts";
import { mix, turned } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the frond. 14 to 400 mm; default 62 mm. */
  readonly height: LengthParam;
  /** Pairs of leaflets. 5 to 18; default 11. */
  readonly pairs: NumberParam;
  /** How broad the frond is: 0 is a sword, 1 a broad triangle. 0 to 1; default 0.5. */
  readonly breadth: NumberParam;
} = {
  height: length({ about: "Height of the frond.", min: 14, max: 400, default: 62 }),
  pairs: integer({ about: "Pairs of leaflets.", min: 5, max: 18, default: 11 }),
  breadth: share({ about: "How broad the frond is: 0 is a sword, 1 a broad triangle.", default: 0.5 }),
};

/** An arching fern frond. The origin is the middle of its box. */
export const fern: MotifFactory<typeof params, "leaf" | "stem"> = defineMotif({
  name: "sprigwright/fern",
  about: "An arching fern frond with paired leaflets that dwindle to the tip.",
  params,
  parts: ["leaf", "stem"],
  draw({ height, pairs, breadth }, tools) {
    const s = sketch(tools, height / 100);
    const spine = [-9, 49, -9, 30, -7, 6, -1, -18, 9, -35, 22, -45];
    const line = spline(spine);
    const leaf: Path[] = [];
    for (let k = 0; k < pairs; k++)
      for (const hand of [-1, 1]) {
        const v = (k + (hand > 0 ? 0.3 : 0)) / pairs;
        const { at, way } = walk(line, mix(0.2, 0.97, v * (0.94 + 0.06 * v)));
        const full = Math.min(1, 0.72 + v * 1.6) * (1.04 - v) * mix(24, 40, breadth);
        const long = Math.max(3.4, tools.stray(full, 0.06));
        const w = Math.min(31 / pairs, long * 0.19) * (1 - 0.5 * v);
        const p = s.at(...at, turned(way, hand * tools.stray(mix(0.205, 0.13, v), 0.05)), 1, hand < 0);
        leaf.push(
          p.fill(
            [0, 0.8, w, -long * 0.2, w * 0.9, -long * 0.6, -long * 0.12, -long],
            [-w * 1.25, -long * 0.66, -w * 0.9, -long * 0.22, 0, 0.8],
          ),
        );
      }
    const end = s.at(22, -45, walk(line, 1).way);
    leaf.push(end.fill([-1.1, 1, -1.6, -2, 0.4, -6], [1.5, -2, 1, 1]));
    return { leaf, stem: s.line(spine, 2.2, 1.9, 1.4, 0.9) };
  },
});
