import type { Path } from "../../geometry/path.ts";
import { length, number, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the whole. 4 to 200 mm; default 26 mm. */
  readonly height: LengthParam;
  /** Width as a share of the height. 0.4 to 1.2; default 0.66. */
  readonly width: NumberParam;
  /** How far its sides are drawn in. 0 to 1; default 0.35. */
  readonly waist: NumberParam;
} = {
  height: length({ about: "Height of the whole.", min: 4, max: 200, default: 26 }),
  width: number({ about: "Width as a share of the height.", min: 0.4, max: 1.2, default: 0.66 }),
  waist: share({ about: "How far its sides are drawn in.", default: 0.35 }),
};

/** A framed lozenge. The origin is its middle. */
export const lozenge: MotifFactory<typeof params, "shape" | "inlay"> = defineMotif({
  name: "sprigwright/lozenge",
  about: "A lozenge with drawn-in sides, a frame around it and a small one in its heart.",
  params,
  parts: ["shape", "inlay"],
  draw({ height, width, waist }, tools) {
    const s = sketch(tools, height / 100, 0.7);
    const k = 0.5 - 0.16 * tools.stray(waist, 0.3);
    const one = (size: number): Path => {
      const [x, y] = [width * 50 * size, 50 * size];
      return s.twin({ tip: true, foot: true }, [0, -y, x * k, -y * k, x, 0], [x * k, y * k, 0, y]);
    };
    return { shape: [behind(one(1), one(0.8)), behind(one(0.66), one(0.4))], inlay: one(0.27) };
  },
});
