import { integer, length, number } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { sketch } from "../builders/sketch.ts";
import { sway } from "../builders/sway.ts";
import { heading } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

const params: {
  /** Width of the whole. 5 to 200 mm; default 28 mm. */
  readonly width: LengthParam;
  /** Bands, of the two colours in turn. 2 to 5; default 4. */
  readonly bands: NumberParam;
  /** Length of the straight feet as a share of the width. 0 to 0.6; default 0.22. */
  readonly feet: NumberParam;
} = {
  width: length({ about: "Width of the whole.", min: 5, max: 200, default: 28 }),
  bands: integer({ about: "Bands, of the two colours in turn.", min: 2, max: 5, default: 4 }),
  feet: number({
    about: "Length of the straight feet as a share of the width.",
    min: 0,
    max: 0.6,
    default: 0.22,
  }),
};

/** Nested arches, like a painted rainbow. The origin is half way up. */
export const arch: MotifFactory<typeof params, "shape" | "inlay"> = defineMotif({
  name: "sprigwright/arch",
  about: "Nested arches with a small sun under them, as if painted with a broad brush.",
  params,
  parts: ["shape", "inlay"],
  draw({ width, bands, feet }, tools) {
    const s = sketch(tools, width / 100, 0.9);
    const [pitch, low] = [38 / bands, (50 + feet * 100) / 2];
    const spring = low - feet * 100;
    const band = Array.from({ length: bands }, (_, k) => {
      const thick = tools.stray(pitch * 0.72, 0.1);
      const r = 50 - pitch * (k + 0.36);
      const foot = low - thick / 2 + sway(tools, 1.5);
      const arc = [-0.17, -0.085, 0, 0.085, 0.17].flatMap((t) => {
        const [x, y] = heading(t);
        return [x * r, spring + y * r];
      });
      return s.line([-r, foot, -r, spring, ...arc, r, spring, r, foot], thick, thick * 1.03, thick);
    });
    const core = (50 - pitch * bands) * 0.62;
    const sun = s.dot(0, low - core, core);
    const painted = [...band, sun];
    return { shape: painted.filter((_, k) => k % 2 === 0), inlay: painted.filter((_, k) => k % 2 === 1) };
  },
});
