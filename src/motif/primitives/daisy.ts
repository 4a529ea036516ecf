import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height, stem included. 14 to 300 mm; default 52 mm. */
  readonly height: LengthParam;
  /** How many petals. 9 to 21; default 15. */
  readonly petals: NumberParam;
  /** How far the flower is turned up: 0 is nearly from the side, 1 from the front. 0 to 1; default 0.45. */
  readonly face: NumberParam;
} = {
  height: length({ about: "Height, stem included.", min: 14, max: 300, default: 52 }),
  petals: integer({ about: "How many petals.", min: 9, max: 21, default: 15 }),
  face: share({
    about: "How far the flower is turned up: 0 is nearly from the side, 1 from the front.",
    default: 0.45,
  }),
};

/** A daisy on its stem, seen from a little above. The origin is half way up. */
export const daisy: MotifFactory<typeof params, "stem" | "leaf" | "petal" | "centre" | "seed"> = defineMotif({
  name: "sprigwright/daisy",
  about: "A daisy on its stem, its face turned towards us, with two notched leaves.",
  params,
  parts: ["stem", "leaf", "petal", "centre", "seed"],
  draw({ height, petals, face }, tools) {
    const s = sketch(tools, height / 100);
    const flat = mix(0.5, 1, tools.stray(face, 0.3));
    const top = -49 + 33 * flat;
    const head = s.at(2, top, heading(0.02));
    const wide = Math.min(8.4, 104 / petals);
    const petal: Path[] = [];
    for (let k = 0; k < petals; k++) {
      const [x, y] = heading((k + 0.5 + sway(tools, 0.15)) / petals);
      const long = tools.stray(32, 0.05);
      // Seen at a slant: what points away is shorter, and all petals spring from a ring.
      const place = (u: number, v: number): number[] => [
        x * v - y * u,
        (y * v + x * u) * flat + 1.5 * (1 - flat),
      ];
      const w = wide / 2;
      const end = [...place(-w * 0.62, long - 2), ...place(-w * 0.1, long), ...place(w * 0.6, long - 1.6)];
      petal.push(
        head.fill([...place(-w * 0.5, 8), ...place(-w, 21), ...end, ...place(w, 21), ...place(w * 0.5, 8)]),
      );
    }
    const dome = 12;
    const seed: Path[] = [];
    for (let k = 0; k < 11; k++) {
      const [x, y] = heading((k + sway(tools, 0.2)) / 11);
      seed.push(head.dot(x * dome * 0.66, y * dome * 0.66 * flat - 0.8, 0.9));
    }
    for (let k = 0; k < 5; k++) {
      const [x, y] = heading((k + 0.3) / 5);
      seed.push(head.dot(x * dome * 0.3, y * dome * 0.3 * flat - 0.8, 0.9));
    }
    const leaf = (h: number, y: number, turn: number, long: number): Path => {
      const l = s.at(-1, y, heading(turn * h), long / 24, h < 0);
      const rib = l.line([0.4, -2, 1, -9, 0.4, -16], 1.3, 0.9);
      return behind(
        l.fill([-0.9, 1, 2.2, -7, 6, -13, 5, -20.5, 0.6, -24, -4.4, -20, -5, -13, -1.8, -6, -0.9, 1]),
        rib,
      );
    };
    return {
      stem: s.line([-3, 49, -1, 30, 1, 8, 2, top], 2.2, 1.8, 1.8),
      leaf: [leaf(1, 43, tools.stray(0.13, 0.15), 27), leaf(-1, 35, tools.stray(0.15, 0.15), 23)],
      petal,
      centre: head.loop([0, -dome * flat - 1, dome, -0.6, 0, dome * flat, -dome, -0.6]),
      seed,
    };
  },
});
