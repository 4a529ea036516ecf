import type { Path } from "../../geometry/path.ts";
import { integer, length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Width of the whole. 4 to 200 mm; default 26 mm. */
  readonly width: LengthParam;
  /** How many, one above the other, of the two colours in turn. 2 to 5; default 3. */
  readonly count: NumberParam;
  /** How steep the arms are: their rise as a share of half the width. 0.3 to 1.2; default 0.6. */
  readonly rise: NumberParam;
} = {
  width: length({ about: "Width of the whole.", min: 4, max: 200, default: 26 }),
  count: integer({
    about: "How many, one above the other, of the two colours in turn.",
    min: 2,
    max: 5,
    default: 3,
  }),
  rise: number({
    about: "How steep the arms are: their rise as a share of half the width.",
    min: 0.3,
    max: 1.2,
    default: 0.6,
  }),
};

/** Chevrons that dwindle upwards. The origin is half way up. */
export const chevron: MotifFactory<typeof params, "shape" | "inlay"> = defineMotif({
  name: "sprigwright/chevron",
  about: "Chevrons one above the other, each a little smaller, as if cut from paper.",
  params,
  parts: ["shape", "inlay"],
  draw({ width, count, rise }, tools) {
    const s = sketch(tools, width / 100, 0.8);
    const whole: Path[] = [];
    const [thick, pitch] = [15, 22];
    const high = 50 * rise + thick + pitch * (count - 1);
    for (let k = 0; k < count; k++) {
      const x = 50 - k * mix(4, 9, 1 / count) + sway(tools, 1.5);
      const t = tools.stray(thick, 0.1);
      const y = high / 2 - 50 * rise - thick - k * pitch + sway(tools, 1);
      const drop = x * rise;
      whole.push(
        s.soft(1.6, [
          0,
          y,
          x,
          y + drop,
          x - 1.6,
          y + drop + t * 0.8,
          0,
          y + t,
          -x + 1.6,
          y + drop + t * 0.8,
          -x,
          y + drop,
        ]),
      );
    }
    return { shape: whole.filter((_, k) => k % 2 === 0), inlay: whole.filter((_, k) => k % 2 === 1) };
  },
});
