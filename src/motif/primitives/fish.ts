import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind, outline } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Length from nose to tail. 8 to 250 mm; default 44 mm. */
  readonly length: LengthParam;
  /** How deep the body is: 0 is a herring, 1 a bream. 0 to 1; default 0.45. */
  readonly depth: NumberParam;
  /** Rows of scales. 0 to 6; default 4. */
  readonly scales: NumberParam;
} = {
  length: length({ about: "Length from nose to tail.", min: 8, max: 250, default: 44 }),
  depth: share({ about: "How deep the body is: 0 is a herring, 1 a bream.", default: 0.45 }),
  scales: integer({ about: "Rows of scales.", min: 0, max: 6, default: 4 }),
};

/** A fish that swims to the left. The origin is half way along. */
export const fish: MotifFactory<typeof params, "body" | "trim" | "marking"> = defineMotif({
  name: "sprigwright/fish",
  about: "A fish in side view: fins and tail with rays, a cheek, an eye and rows of scales.",
  params,
  parts: ["body", "trim", "marking"],
  draw({ length: long, depth, scales }, tools) {
    const s = sketch(tools, long / 100, 0.7);
    const d = mix(0.75, 1.4, tools.stray(depth, 0.25));
    const flick = sway(tools, 4);
    const body = s.fill(
      [-50, 1, -40, -8 * d, -22, -15 * d, -2, -15 * d, 17, -8.5 * d, 31, -2.6],
      [33, 0, 31, 3],
      [16, 8 * d, -3, 14.6 * d, -24, 14 * d, -41, 8 * d, -50, 1],
    );
    const tail = s.fill(
      [29, -1.6, 37, -9, 50, -18 + flick],
      [47, -9, 45.6, flick * 0.6],
      [47, 9, 49, 17 + flick],
      [37, 9, 29, 1.6],
    );
    const back = s.fill(
      [-24, -12 * d, -14, -15 * d - 8.5, 4, -15 * d - 6],
      [9, -14 * d, 18, -6 * d],
      [-2, -13 * d, -24, -12 * d],
    );
    const belly = [
      s.fill([-14, 12 * d, -10, 14 * d + 8, -3, 14 * d + 10], [-1, 14 * d + 3, 4, 10 * d]),
      s.fill([12, 8 * d, 16, 8 * d + 7, 23, 8 * d + 7.6], [22, 8 * d, 25, 3 * d]),
    ];
    const gill = s.line([-30.5, -15.5 * d, -24.2, -5 * d, -23.8, 4 * d, -30, 14.5 * d], 0.62 / s.unit);
    const fin = s.fill([-19, 3.4, -11, 1.4, -3, 4.4], [-4.6, 8, -9, 11.4, -15, 9.4, -19, 3.4]);
    const marking: Path[] = [];
    const pitch = 5.6;
    for (let row = 0; row < scales; row++) {
      const x = mix(-14.5, 18, (row + 0.2) / Math.max(1, scales));
      const room = 12.6 * d * (1 - Math.max(0, x + 6) / 34) - 1.6;
      for (let y = row % 2 === 0 ? -pitch * 3 : -pitch * 2.5; y < 20; y += pitch) {
        if (Math.abs(y) > room - 1.4 || (x < 2 && y > -2 && y < 14)) continue;
        marking.push(
          s.line([x - 1.6, y - 2, x + 1, y - 1.3, x + 1, y + 1.3, x - 1.6, y + 2], 0.9, 1.5, 1.5, 0.9),
        );
      }
    }
    const rays = [-1, 1].map((h) =>
      s.line([36, h * 2.4, 41, h * 5 + flick * 0.3, 45.4, h * 10 + flick * 0.7], 1.3, 1.1),
    );
    const eye = [s.dot(-38.6, -3.4 * d, 2.9), s.line([-47, 3.4, -43.6, 3.6, -41, 2.4], 1.1)];
    const solid = behind(body, [gill, outline(fin, 0.55)]);
    const fins = behind([back, ...belly, tail], [body, ...rays]);
    return { body: solid, trim: [fins, fin], marking: [...marking, ...eye] };
  },
});
