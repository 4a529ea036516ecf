import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind, within } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the whole. 10 to 250 mm; default 46 mm. */
  readonly height: LengthParam;
  /** Painted bands. 1 to 4; default 2. */
  readonly bands: NumberParam;
  /** How stout it is. 0 to 1; default 0.5. */
  readonly girth: NumberParam;
} = {
  height: length({ about: "Height of the whole.", min: 10, max: 250, default: 46 }),
  bands: integer({ about: "Painted bands.", min: 1, max: 4, default: 2 }),
  girth: share({ about: "How stout it is.", default: 0.5 }),
};

/** A pot buoy with its line. The origin is half way up. */
export const buoy: MotifFactory<typeof params, "body" | "trim" | "marking"> = defineMotif({
  name: "sprigwright/buoy",
  about: "A lobster pot's buoy: a painted float on a spindle, its line looped below.",
  params,
  parts: ["body", "trim", "marking"],
  draw({ height, bands, girth }, tools) {
    const s = sketch(tools, height / 100, 0.9);
    const b = s.at(-2, 0, heading(tools.stray(0.035, 0.6)));
    const w = mix(0.82, 1.2, tools.stray(girth, 0.2));
    const float = b.twin(
      {},
      [0, -31, 7 * w, -30],
      [13 * w, -26, 16 * w, -12, 16 * w, 4, 12 * w, 15, 7 * w, 20],
      [5.4 * w, 23.4, 0, 23.4],
    );
    const spindle = [b.line([0, -34.6, 0, -48], 5, 4.4), b.line([0, 27.4, 0, 30], 4.6, 3.8)];
    const line = s.line([-5, 31, -14, 32, -21, 39, -12, 47, 4, 45, 14, 37, 23, 35, 29, 42, 22, 48], 2.2);
    const trim: Path[] = [];
    for (let k = 0; k < bands; k++) {
      const [y, t] = [mix(-22, 13, bands === 1 ? 0.5 : k / (bands - 1)), Math.min(7, 20 / bands)];
      trim.push(
        within(
          float,
          b.fill(
            [-30, y - t / 2, 0, y - t / 2 + 3, 30, y - t / 2],
            [30, y + t / 2],
            [0, y + t / 2 + 3, -30, y + t / 2],
            [-30, y - t / 2],
          ),
        ),
      );
    }
    const light = b.line([-9.6 * w, -13, -10.6 * w, -4, -9.6 * w, 5], 1.4, 2.6, 1.4);
    return { body: behind(float, trim, 0.9 * s.unit), trim: [...trim, ...spindle, line], marking: light };
  },
});
