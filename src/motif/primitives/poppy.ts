import type { Path } from "../../geometry/path.ts";
import { integer, length } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, stem included. 14 to 300 mm; default 54 mm. */
  readonly height: LengthParam;
  /** Seed heads, each on its own stem. 1 to 3; default 3. */
  readonly heads: NumberParam;
  /** Points of the crown on each head. 5 to 11; default 7. */
  readonly crown: NumberParam;
} = {
  height: length({ about: "Height, stem included.", min: 14, max: 300, default: 54 }),
  heads: integer({ about: "Seed heads, each on its own stem.", min: 1, max: 3, default: 3 }),
  crown: integer({ about: "Points of the crown on each head.", min: 5, max: 11, default: 7 }),
};

/** Where heads stand: x, y, size and lean. */
const PLACES = [
  [1, -28, 1.22, 0.01],
  [-24, -4, 0.95, -0.05],
  [22, 5, 0.74, 0.055],
] as const;

/** Ripe poppy heads with their crowns. The origin is half way up. */
export const poppy: MotifFactory<typeof params, "stem" | "seed" | "marking" | "centre"> = defineMotif({
  name: "sprigwright/poppy",
  about: "Ripe poppy heads: ribbed urns under a pointed crown, on bare stems.",
  params,
  parts: ["stem", "seed", "marking", "centre"],
  draw({ height, heads, crown }, tools) {
    const s = sketch(tools, height / 100);
    const [stem, seed, marking, centre]: Path[][] = [[], [], [], []];
    for (const [x, y, size, lean] of PLACES.slice(0, heads)) {
      const up = heading(lean + sway(tools, 0.02));
      const h = s.at(x, y, up, tools.stray(size, 0.06));
      const stalk = (far: number): number[] => [x - up[0] * far * size, y - up[1] * far * size];
      stem!.push(s.line([x * 0.06, 49, x * 0.14, 40, ...stalk(26), ...stalk(12)], 2.4, 1.9, 1.9));
      seed!.push(h.twin({}, [0, -11, 6, -10, 12.5, -2, 11, 7.5, 4.2, 12], [3, 14.6], [3.4, 16.2, 0, 17]));
      for (const u of [-0.62, 0, 0.62])
        marking!.push(h.line([u * 7, -8, u * 14, 0, u * 8.4, 10], 0.8, 1.5, 0.8));
      const half = 12.4;
      const rim: number[][] = [[-half, -10.4, 0, -8.6, half, -10.4]];
      for (let k = 0; k < crown; k++) {
        const [a, b] = [half - (2 * half * (k + 0.5)) / crown, half - (2 * half * (k + 1)) / crown];
        const rise = (v: number): number => -13.4 - 3 * (1 - (v * v) / (half * half));
        rim.push([
          a + half / crown,
          rise(a) + 0.2,
          a,
          rise(a) - 3.6,
          a - (half / crown) * 0.9,
          rise(b) + 0.6,
        ]);
      }
      centre!.push(h.fill(...rim));
    }
    return { stem: stem!, seed: seed!, marking: marking!, centre: centre! };
  },
});
