import type { Path } from "../../geometry/path.ts";
import { integer, length } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, stem included. 16 to 300 mm; default 56 mm. */
  readonly height: LengthParam;
  /** Rays of the umbel, each with a cluster at its end. 5 to 11; default 7. */
  readonly rays: NumberParam;
  /** Flowers of each cluster. 3 to 9; default 7. */
  readonly flowers: NumberParam;
} = {
  height: length({ about: "Height, stem included.", min: 16, max: 300, default: 56 }),
  rays: integer({ about: "Rays of the umbel, each with a cluster at its end.", min: 5, max: 11, default: 7 }),
  flowers: integer({ about: "Flowers of each cluster.", min: 3, max: 9, default: 7 }),
};

/** A flower of the hedgerow, as cow parsley is: rays from one point, clusters at their ends. The origin is half way up. */
export const umbel: MotifFactory<typeof params, "stem" | "leaf" | "petal"> = defineMotif({
  name: "sprigwright/umbel",
  about: "An umbel like cow parsley's: rays that spring from one point, each with a cluster of tiny flowers.",
  params,
  parts: ["stem", "leaf", "petal"],
  draw({ height, rays, flowers }, tools) {
    const s = sketch(tools, height / 100);
    const stem = [s.line([-4, 49, -3, 32, 0, 14, 0.5, -2], 2.3, 1.8, 1.6)];
    const petal: Path[] = [];
    for (let k = 0; k < rays; k++) {
      const u = (2 * k) / (rays - 1) - 1;
      const way = heading(u * 0.182 + sway(tools, 0.008));
      const far = tools.stray(mix(36, 38, u * u) - (k % 2) * 11, 0.04);
      const [x, y] = [0.5 + way[0] * far * 1.12, -3 + way[1] * far];
      stem.push(s.line([0.5, -2, 0.5 + way[0] * far * 0.4, -3 + way[1] * far * 0.55, x, y], 1.2, 1));
      const r = Math.min(7.2, 54 / rays);
      const tuft = s.at(x, y, heading(u * 0.14), r / 9);
      for (let i = 0; i < flowers; i++) {
        const v = flowers > 1 ? (2 * i) / (flowers - 1) - 1 : 0;
        const low = i % 2 === 1;
        const [a, b] = heading(v * 0.24);
        const out = tools.stray(low ? 5.2 : 8.4, 0.07);
        stem.push(tuft.line([a * 1.2, b - 0.4, a * out, b * out], 0.95));
        petal.push(tuft.dot(a * out, b * out, tools.stray(low ? 1.7 : 2.1, 0.1)));
      }
    }
    const bract = (h: number, y: number, long: number): Path =>
      s.fill(
        [-1 * h, y, 6 * h, y - long * 0.45, 14 * h, y - long],
        [5 * h, y - long * 0.75, -1.6 * h, y - 6],
      );
    return { stem, leaf: [bract(-1, 34, 17), bract(1, 24, 13)], petal };
  },
});
