import type { Path } from "../../geometry/path.ts";
import { length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Across all three. 3 to 100 mm; default 9 mm. */
  readonly size: LengthParam;
  /** How much they differ in size: 0 is alike, 1 one large and two small. 0 to 1; default 0.5. */
  readonly mix: NumberParam;
} = {
  size: length({ about: "Across all three.", min: 3, max: 100, default: 9 }),
  mix: share({ about: "How much they differ in size: 0 is alike, 1 one large and two small.", default: 0.5 }),
};

/** Three crumbs in a loose group. The origin is the middle of their box. */
export const crumb: MotifFactory<typeof params, "fleck"> = defineMotif({
  name: "sprigwright/crumb",
  about: "A pinch of three angular crumbs, as if cut from paper.",
  params,
  parts: ["fleck"],
  draw({ size, mix: unlike }, tools) {
    const s = sketch(tools, size / 100);
    const one = (x: number, y: number, r: number, from: number, sides: number): Path => {
      const points: number[] = [];
      for (let k = 0; k < sides; k++) {
        const [u, v] = heading(from + (k + sway(tools, 0.16)) / sides);
        const out = tools.stray(r, 0.14) * (k % 2 === 0 ? 1.08 : 0.9);
        points.push(x + u * out, y + v * out);
      }
      return s.soft(r * 0.3, points);
    };
    const small = mix(21, 14, unlike);
    return {
      fleck: [
        one(-24, -16, mix(21, 27, unlike), 0.06, 5),
        one(30, -22, small, 0.02, 4),
        one(15, 30, small * 0.94, 0.11, 5),
      ],
    };
  },
});
