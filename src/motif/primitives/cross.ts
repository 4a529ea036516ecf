import type { Path } from "../../geometry/path.ts";
import { length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Across, both ways. 4 to 200 mm; default 24 mm. */
  readonly size: LengthParam;
  /** How far the arms flare towards their ends. 0 to 1; default 0.5. */
  readonly flare: NumberParam;
  /** How deep the ends are hollowed. 0 to 1; default 0.4. */
  readonly hollow: NumberParam;
} = {
  size: length({ about: "Across, both ways.", min: 4, max: 200, default: 24 }),
  flare: share({ about: "How far the arms flare towards their ends.", default: 0.5 }),
  hollow: share({ about: "How deep the ends are hollowed.", default: 0.4 }),
};

/** A flared cross. The origin is its middle. */
export const cross: MotifFactory<typeof params, "shape" | "inlay"> = defineMotif({
  name: "sprigwright/cross",
  about: "A cross with flared, hollowed arms, an eye in its middle and a drop in each arm.",
  params,
  parts: ["shape", "inlay"],
  draw({ size, flare, hollow }, tools) {
    const s = sketch(tools, size / 100, 0.7);
    const runs: number[][] = [];
    const inlay: Path[] = [s.loop([0, -8, 8, 0, 0, 8, -8, 0])];
    const wide = mix(12, 27, tools.stray(flare, 0.25));
    const deep = 12 * tools.stray(hollow, 0.3);
    for (let k = 0; k < 4; k++) {
      const [x, y] = heading(k / 4);
      const at = (u: number, v: number): number[] => [-y * u + x * v, x * u + y * v];
      const corner = mix(9, 11, flare);
      runs.push([...(k === 0 ? at(-corner, corner) : []), ...at(-corner * 0.96, 24), ...at(-wide, 49)]);
      runs.push([
        ...at(-wide * 0.5, 49 - deep * 0.8),
        ...at(0, 49 - deep),
        ...at(wide * 0.5, 49 - deep * 0.8),
        ...at(wide, 49),
      ]);
      runs.push([...at(corner * 0.96, 24), ...at(corner, corner)]);
      const d = s.at(0, 0, [x, y]);
      inlay.push(d.line([0, -37 + deep, 0, -27 + deep * 0.5, 0, -17], 7.4, 4.6, 2.2));
    }
    return { shape: s.fill(...runs), inlay };
  },
});
