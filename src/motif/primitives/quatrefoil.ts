import type { Path } from "../../geometry/path.ts";
import { length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind, inset } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Across, both ways. 4 to 200 mm; default 26 mm. */
  readonly size: LengthParam;
  /** How broad the frame is. 0 to 1; default 0.4. */
  readonly frame: NumberParam;
  /** How far the four foils stand apart. 0 to 1; default 0.5. */
  readonly foil: NumberParam;
} = {
  size: length({ about: "Across, both ways.", min: 4, max: 200, default: 26 }),
  frame: share({ about: "How broad the frame is.", default: 0.4 }),
  foil: share({ about: "How far the four foils stand apart.", default: 0.5 }),
};

/** A framed quatrefoil with points between its foils. The origin is its middle. */
export const quatrefoil: MotifFactory<typeof params, "shape" | "inlay"> = defineMotif({
  name: "sprigwright/quatrefoil",
  about: "A quatrefoil frame with points between its foils, around a four-petalled inlay.",
  params,
  parts: ["shape", "inlay"],
  draw({ size, frame, foil }, tools) {
    const s = sketch(tools, size / 100, 0.7);
    // Four circles of radius r about points c from the middle; neighbours meet at (a, a).
    const r = tools.stray(mix(25, 22, foil), 0.04);
    const c = 49.5 - r;
    const a = (c + Math.sqrt(Math.max(0, 2 * r * r - c * c))) / 2;
    const runs = [0, 1, 2, 3].map((k) => {
      const [x, y] = heading(k / 4);
      const set = (u: number, v: number): number[] => [x * v - y * u, y * v + x * u];
      const lobe = [-0.25, -0.167, -0.083, 0, 0.083, 0.167, 0.25].flatMap((t) => {
        const [u, v] = heading(t);
        return set(u * r, c - v * r);
      });
      return [...(k === 0 ? set(-a, a) : []), ...lobe, ...set(a, a)];
    });
    const whole = s.fill(...runs);
    const inlay: Path[] = [s.dot(0, 0, 3.4)];
    for (let k = 0; k < 4; k++) {
      const d = s.at(0, 0, heading(k / 4));
      inlay.push(d.twin({ foot: true }, [0, -31 * tools.stray(1, 0.06), 7.2, -25, 6.4, -16, 0, -6.5]));
      inlay.push(s.at(0, 0, heading((k + 0.5) / 4)).dot(0, -21, 2.1));
    }
    return { shape: behind(whole, inset(whole, mix(3, 9, frame) * s.unit)), inlay };
  },
});
