import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Across: diameter of the circle that the blades touch. 4 to 200 mm; default 26 mm. */
  readonly size: LengthParam;
  /** Blades of each colour. 2 to 6; default 4. */
  readonly blades: NumberParam;
  /** How far the blades are swept. 0 to 1; default 0.5. */
  readonly sweep: NumberParam;
} = {
  size: length({
    about: "Across: diameter of the circle that the blades touch.",
    min: 4,
    max: 200,
    default: 26,
  }),
  blades: integer({ about: "Blades of each colour.", min: 2, max: 6, default: 4 }),
  sweep: share({ about: "How far the blades are swept.", default: 0.5 }),
};

/** A whirl of swept blades. The origin is its middle. */
export const pinwheel: MotifFactory<typeof params, "shape" | "inlay"> = defineMotif({
  name: "sprigwright/pinwheel",
  about: "A whirl of swept blades in two colours, long and short in turn.",
  params,
  parts: ["shape", "inlay"],
  draw({ size, blades, sweep }, tools) {
    const s = sketch(tools, size / 100, 0.6);
    const n = blades * 2;
    const bend = tools.stray(mix(0.02, 0.16, sweep), 0.2);
    const blade = (k: number): Path => {
      const long = tools.stray(k % 2 === 0 ? 49.5 : 39, 0.05);
      const base = k / n;
      const at = (out: number, off: number): number[] => {
        const [x, y] = heading(base + bend * (out / 50) * (1.6 - 0.6 * (out / 50)));
        return [x * out - y * off, y * out + x * off];
      };
      const w = Math.min(13, 66 / n);
      return s.fill(
        [...at(10, -w * 0.2), ...at(20, w * 0.46), ...at(long * 0.72, w * 1.02), ...at(long, 0)],
        [
          ...at(long * 0.78, -w * 0.5),
          ...at(long * 0.5, -w * 0.62),
          ...at(18, -w * 0.5),
          ...at(10, -w * 0.2),
        ],
      );
    };
    const all = Array.from({ length: n }, (_, k) => blade(k));
    return {
      shape: all.filter((_, k) => k % 2 === 0),
      inlay: [...all.filter((_, k) => k % 2 === 1), s.dot(0, 0, 5)],
    };
  },
});
