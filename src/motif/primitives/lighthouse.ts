import type { Path } from "../../geometry/path.ts";
import { integer, length, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { behind } from "../builders/offset.ts";
import { sketch } from "../builders/sketch.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Height of the whole. 12 to 300 mm; default 52 mm. */
  readonly height: LengthParam;
  /** Bands on the tower. 1 to 4; default 3. */
  readonly bands: NumberParam;
  /** How stout the tower is. 0 to 1; default 0.5. */
  readonly girth: NumberParam;
} = {
  height: length({ about: "Height of the whole.", min: 12, max: 300, default: 52 }),
  bands: integer({ about: "Bands on the tower.", min: 1, max: 4, default: 3 }),
  girth: share({ about: "How stout the tower is.", default: 0.5 }),
};

/** A lighthouse on its rock. The origin is half way up. */
export const lighthouse: MotifFactory<typeof params, "trim" | "body" | "marking"> = defineMotif({
  name: "sprigwright/lighthouse",
  about: "A banded lighthouse on its rock, with lantern, gallery and windows.",
  params,
  parts: ["trim", "body", "marking"],
  draw({ height, bands, girth }, tools) {
    const s = sketch(tools, height / 100, 0.6);
    const w = mix(0.8, 1.25, tools.stray(girth, 0.2));
    const edge = (y: number): number =>
      w * (6.6 + (y + 24) * 0.085 + Math.max(0, y - 8) * Math.max(0, y - 8) * 0.0022);
    const tower: Path[] = [];
    const pieces = bands * 2 + 1;
    // Bands and gaps between them in turn, a little taller as they go down.
    const level = (k: number): number => mix(-22, 41, (k / pieces) * (0.86 + (0.14 * k) / pieces));
    for (let k = 0; k < pieces; k++) {
      const [a, b] = [level(k) + (k === 0 ? 0 : 0.55), level(k + 1) - 0.55];
      tower.push(
        s.fill(
          [-edge(a), a, 0, a + 1.2, edge(a), a],
          [edge((a + b) / 2), (a + b) / 2, edge(b), b],
          [0, b + 1.2, -edge(b), b],
          [-edge((a + b) / 2), (a + b) / 2, -edge(a), a],
        ),
      );
    }
    const roof = s.twin({}, [0, -50, 1.3, -48.6], [1.5, -45.6], [6 * w, -42.6, 8.4 * w, -37.6], [0, -36.6]);
    const gallery = [
      s.line([-10.4 * w, -24.4, 0, -23.6, 10.4 * w, -24.4], 2.4),
      s.line([-6.4 * w, -35.4, 6.4 * w, -35.4], 1.4),
    ];
    const lantern = s.fill([-5.6 * w, -33.4], [5.6 * w, -33.4], [5.6 * w, -27], [-5.6 * w, -27]);
    const rock = s.fill(
      [-34, 49, -31, 43],
      [-22, 41.6, -17, 38.4],
      [-8, 41.4, 4, 42, 14, 39.6],
      [20, 42.6, 26, 41],
      [33, 44, 38, 49],
      [0, 50, -34, 49],
    );
    const window = (y: number): Path => s.fill([-1.7, y + 3, -1.8, y - 1, 0, y - 3, 1.8, y - 1, 1.7, y + 3]);
    const even = (p: Path, k: number): boolean => k % 2 === 0 && p.contours.length > 0;
    return {
      trim: [...tower.filter((p, k) => !even(p, k)), lantern],
      body: [...tower.filter(even), roof, ...gallery, behind(rock, tower, 0.9 * s.unit)],
      marking: [window(level(0) + 5.4), window(level(pieces - 1) + 4.6)],
    };
  },
});
