import { integer, length, number, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { within } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Width of the base. 4 to 200 mm; default 24 mm. */
  readonly width: LengthParam;
  /** Height as a share of the width. 0.5 to 1.6; default 0.92. */
  readonly height: NumberParam;
  /** Stripes, of the two colours in turn. 2 to 6; default 4. */
  readonly stripes: NumberParam;
  /** How soft its corners are. 0 to 1; default 0.4. */
  readonly roundness: NumberParam;
} = {
  width: length({ about: "Width of the base.", min: 4, max: 200, default: 24 }),
  height: number({ about: "Height as a share of the width.", min: 0.5, max: 1.6, default: 0.92 }),
  stripes: integer({ about: "Stripes, of the two colours in turn.", min: 2, max: 6, default: 4 }),
  roundness: share({ about: "How soft its corners are.", default: 0.4 }),
};

/** A striped triangle. The origin is half way up. */
export const triangle: MotifFactory<typeof params, "shape" | "inlay"> = defineMotif({
  name: "sprigwright/triangle",
  about: "A triangle of slightly bowed stripes with gaps between them.",
  params,
  parts: ["shape", "inlay"],
  draw({ width, height, stripes, roundness }, tools) {
    const s = sketch(tools, width / 100, 0.8);
    const y = height * 50;
    const whole = s.soft(mix(2, 16, roundness), [0, -y, 50, y, -50, y]);
    const gap = Math.max(0.55 / s.unit, 2.6);
    // Stripes of one height but for the tip, which is taller.
    const level = (k: number): number =>
      k === 0 ? -y - 2 : k === stripes ? y + 12 : mix(-y, y, (k + 0.7) / (stripes + 0.7));
    const stripe = Array.from({ length: stripes }, (_, k) => {
      const [a, b] = [level(k) + gap / 2, level(k + 1) - gap / 2];
      const bow = tools.stray(3, 0.6);
      return within(whole, s.fill([-60, a, 0, a + bow, 60, a], [60, b], [0, b + 3, -60, b], [-60, a]));
    });
    return { shape: stripe.filter((_, k) => k % 2 === 0), inlay: stripe.filter((_, k) => k % 2 === 1) };
  },
});
