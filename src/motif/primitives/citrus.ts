import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Width of the half slice. 8 to 200 mm; default 36 mm. */
  readonly width: LengthParam;
  /** How many segments. 3 to 7; default 5. */
  readonly segments: NumberParam;
  /** How thick rind and pith are. 0 to 1; default 0.4. */
  readonly rind: NumberParam;
} = {
  width: length({ about: "Width of the half slice.", min: 8, max: 200, default: 36 }),
  segments: integer({ about: "How many segments.", min: 3, max: 7, default: 5 }),
  rind: share({ about: "How thick rind and pith are.", default: 0.4 }),
};

/** Half a slice of an orange. The origin is the middle of its box. */
export const citrus: MotifFactory<typeof params, "flesh" | "fruit" | "seed"> = defineMotif({
  name: "sprigwright/citrus",
  about: "Half a slice of citrus: rind, pith, plump segments and a seed or two.",
  params,
  parts: ["flesh", "fruit", "seed"],
  draw({ width, segments, rind }, tools) {
    const s = sketch(tools, width / 100, 0.8);
    const c = s.at(0, -23);
    const arc = (r: number, from: number, to: number): number[] =>
      Array.from({ length: 9 }, (_, k) => heading(mix(from, to, k / 8))).flatMap(([x, y]) => [x * r, y * r]);
    const pith = mix(46.5, 42.5, rind);
    const flesh = pith - mix(2.6, 5, rind);
    const half = (r: number): Path => c.fill(arc(r, 0.25, 0.75));
    const each = 0.5 / segments;
    const cut: Path[] = [];
    const seed: Path[] = [];
    for (let k = 0; k < segments; k++) {
      const middle = 0.25 + (k + 0.5) * each;
      const d = c.at(0, 2.4, heading(middle));
      const r = tools.stray(flesh - 2.4, 0.02);
      const w = r * 3 * each;
      // A segment: a wedge that keeps its distance from its neighbours, its corners soft, its rim a little full.
      const [x, y] = heading(each / 2);
      const apex = -1.25 / x;
      cut.push(
        d.soft(6, [
          0,
          apex,
          x * (r + apex),
          apex + y * (r + apex),
          0,
          -r * 1.02,
          -x * (r + apex),
          apex + y * (r + apex),
        ]),
      );
      if (k % 2 === 1)
        seed.push(
          d
            .at(w * 0.12, -r * 0.42, heading(sway(tools, 0.04)))
            .twin({ tip: true }, [0, 4.4, 2.2, 0, 0, -3.2]),
        );
    }
    const peel = c.fill(arc(49.5, 0.25, 0.75), [-pith, 0], arc(pith, 0.75, 0.25).slice(2));
    return { flesh: half(48), fruit: [peel, ...cut], seed };
  },
});
