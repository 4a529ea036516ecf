import type { Path } from "../../geometry/path.ts";
import { length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Across: diameter of the circle that the arms touch. 6 to 200 mm; default 32 mm. */
  readonly size: LengthParam;
  /** How slender the arms are. 0 to 1; default 0.5. */
  readonly slender: NumberParam;
  /** How far the arms curl, all one way. 0 to 1; default 0.4. */
  readonly curl: NumberParam;
} = {
  size: length({
    about: "Across: diameter of the circle that the arms touch.",
    min: 6,
    max: 200,
    default: 32,
  }),
  slender: share({ about: "How slender the arms are.", default: 0.5 }),
  curl: share({ about: "How far the arms curl, all one way.", default: 0.4 }),
};

/** A starfish from above. The origin is its middle. */
export const starfish: MotifFactory<typeof params, "body" | "marking"> = defineMotif({
  name: "sprigwright/starfish",
  about: "A starfish with five curling arms and rows of beads.",
  params,
  parts: ["body", "marking"],
  draw({ size, slender, curl }, tools) {
    const s = sketch(tools, size / 100, 0.5);
    const w = mix(1.25, 0.75, slender);
    const points: number[] = [];
    const marking: Path[] = [];
    for (let k = 0; k < 5; k++) {
      const bend = tools.stray(curl * 0.085, 0.9) + sway(tools, 0.03);
      const long = tools.stray(49.4, 0.07);
      const base = (k + sway(tools, 0.06)) / 5;
      // A point `out` along the arm and `off` to its right, the arm turning as it goes out.
      const on = (out: number, off: number): number[] => {
        const [x, y] = heading(base + bend * (out / 50) * (out / 50));
        return [x * out - y * off, y * out + x * off];
      };
      const [vx, vy] = heading(base - 0.1);
      points.push(vx * 14.5 * w, vy * 14.5 * w);
      points.push(
        ...on(26, -6.8 * w),
        ...on(long - 8, -4.6 * w),
        ...on(long, -0.4),
        ...on(long - 8, 4.6 * w),
        ...on(26, 6.8 * w),
      );
      for (let i = 0; i < 6; i++) {
        const [x, y] = on(9 + i * (long - 16) * 0.176, 0);
        marking.push(s.dot(x!, y!, mix(2.3, 1, i / 5)));
      }
      const [u, v] = heading(base - 0.1);
      marking.push(s.dot(u * 8.4 * w, v * 8.4 * w, 1.3));
    }
    return { body: s.loop(points), marking: [...marking, s.dot(0, 0, 2.6)] };
  },
});
