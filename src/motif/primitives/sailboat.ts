import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the whole. 10 to 300 mm; default 46 mm. */
  readonly height: LengthParam;
  /** How far the wind fills the sails. 0 to 1; default 0.5. */
  readonly wind: NumberParam;
  /** Seams in the larger sail. 0 to 4; default 3. */
  readonly seams: NumberParam;
} = {
  height: length({ about: "Height of the whole.", min: 10, max: 300, default: 46 }),
  wind: share({ about: "How far the wind fills the sails.", default: 0.5 }),
  seams: integer({ about: "Seams in the larger sail.", min: 0, max: 4, default: 3 }),
};

/** A small boat under sail. The origin is half way up. */
export const sailboat: MotifFactory<typeof params, "body" | "trim" | "marking"> = defineMotif({
  name: "sprigwright/sailboat",
  about: "A small boat under two full sails, with a pennant, a stripe on its hull and ripples below.",
  params,
  parts: ["body", "trim", "marking"],
  draw({ height, wind, seams }, tools) {
    const s = sketch(tools, height / 100, 0.8);
    const b = s.at(0, 0, heading(tools.stray(0.012, 0.9)));
    const w = tools.stray(mix(2, 11, wind), 0.3);
    const hull = b.fill(
      [-39, 21, -14, 26, 14, 26, 43, 18],
      [38, 28, 31, 36, 27, 39],
      [10, 41.4, -10, 41.4, -27, 39.4],
      [-34, 33, -39, 21],
    );
    const stripe = b.line([-36.4, 25.6, -12, 29.8, 14, 29.6, 39.6, 23.4], 0.55 / s.unit);
    const mast = b.line([0, -46, 0.2, -10, 0, 26], 1.8, 2.4, 2.6);
    const main = b.fill(
      [3, -40, 14 + w * 0.5, -22, 27 + w, 0, 35, 18],
      [20, 20.6, 3, 20.4],
      [3, -10, 3, -40],
    );
    const jib = b.fill(
      [-3, -34, -10 - w * 0.8, -14, -19 - w * 0.7, 4, -32, 17.6],
      [-18, 20.4, -3, 20.6],
      [-5.4, -6, -3, -34],
    );
    const pennant = b.fill([0.4, -48, 9, -48 + sway(tools, 1.5), 17, -44.6], [8, -43, 0.4, -41.6]);
    const seam = Array.from({ length: seams }, (_, k) => {
      const v = (k + 1) / (seams + 1);
      const [y, x] = [mix(-34, 20, v), mix(5, 36 + w * 0.6, v)];
      return b.line([2, y, x * 0.5, y + 2.4, x + 6, y + 1], 0.55 / s.unit);
    });
    const ripple = (x: number, y: number, long: number): Path =>
      s.line(
        [x, y, x + long * 0.25, y - 1.8, x + long * 0.5, y, x + long * 0.75, y + 1.8, x + long, y],
        1.2,
        2,
        1.2,
      );
    const ripples = [ripple(-44, 47, 36), ripple(-2, 48, 46)];
    const stars = [-20, 0, 20].map((x) => b.dot(x, 34.8 - (x * x) / 180, 1.3));
    return {
      body: [behind(hull, stripe), mast, ...ripples],
      trim: [behind(main, seam), jib, pennant],
      marking: stars,
    };
  },
});
