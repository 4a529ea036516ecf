import type { Path } from "../../geometry/path.ts";
import { integer, length, number, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { type BladeShape, bladeHalf, halfWidthAt } from "../builders/blade.ts";
import { bent, type Chain, mirrored, rangeOf, straight, toPath } from "../builders/chain.ts";
import { FINE, stroke } from "../builders/stroke.ts";
import { sway } from "../builders/sway.ts";
import { mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";
import type { MotifTools } from "../motif.ts";

const params: {
  /** From the foot of the stalk to the tip. 4 to 200 mm; default 24 mm. */
  readonly length: LengthParam;
  /** Greatest width as a share of the blade's length: a willow's is 0.2, a lime tree's 0.9. 0.18 to 0.9; default 0.5. */
  readonly width: NumberParam;
  /** Where the blade is widest, from its base (0) to its tip (1). 0.25 to 0.7; default 0.4. */
  readonly fullest: NumberParam;
  /** How blunt the tip is: 0 is pointed, 1 is round as a spoon. 0 to 1; default 0.12. */
  readonly roundness: NumberParam;
  /** Length of the bare stalk as a share of the whole. 0 to 0.4; default 0.16. */
  readonly stalk: NumberParam;
  /** Side veins on each side of the midrib; fewer are drawn where they would crowd. 0 to 12; default 5. */
  readonly veins: NumberParam;
  /** How far the leaf bows: its middle to the left (above 0) or to the right (below 0). -1 to 1; default 0.4. */
  readonly bend: NumberParam;
} = {
  length: length({
    about: "From the foot of the stalk to the tip.",
    min: 4,
    max: 200,
    default: 24,
  }),
  width: number({
    about: "Greatest width as a share of the blade's length: a willow's is 0.2, a lime tree's 0.9.",
    min: 0.18,
    max: 0.9,
    default: 0.5,
  }),
  fullest: number({
    about: "Where the blade is widest, from its base (0) to its tip (1).",
    min: 0.25,
    max: 0.7,
    default: 0.4,
  }),
  roundness: share({
    about: "How blunt the tip is: 0 is pointed, 1 is round as a spoon.",
    default: 0.12,
  }),
  stalk: number({
    about: "Length of the bare stalk as a share of the whole.",
    min: 0,
    max: 0.4,
    default: 0.16,
  }),
  veins: integer({
    about: "Side veins on each side of the midrib; fewer are drawn where they would crowd.",
    min: 0,
    max: 12,
    default: 5,
  }),
  bend: number({
    about: "How far the leaf bows: its middle to the left (above 0) or to the right (below 0).",
    min: -1,
    max: 1,
    default: 0.4,
  }),
};

/** A leaf on a short stalk; its veins lie on the blade. The origin is the middle of its box; the tip is up. */
export const leaf: MotifFactory<typeof params, "blade" | "vein"> = defineMotif({
  name: "sprigwright/leaf",
  about: "A leaf on a short stalk, with a tapered midrib and side veins.",
  params,
  parts: ["blade", "vein"],
  draw(p, tools) {
    const { stray } = tools;
    const L = stray(p.length, 0.08);
    const stalk = stray(p.stalk, 0.2) * L;
    const stalkHalf = Math.max(FINE / 2, L * 0.024);
    const half = Math.max(stalkHalf * 1.6, (stray(p.width, 0.14) * (L - stalk)) / 2);
    const shape = {
      length: L,
      half,
      fullest: stray(p.fullest, 0.08),
      roundness: p.roundness,
      stalk,
      stalkHalf,
    };
    const bow = Math.max(-1.2, Math.min(1.2, p.bend + sway(tools, 0.7)));
    const bulge = -bow * L * 0.12;
    // Bending lengthens a tip a little: measured, brought to its length, and put on the origin.
    const outline = bent(mirrored(bladeHalf(shape)), 0, -L, bulge);
    const [[left, right], [top, bottom]] = [rangeOf(outline, 0), rangeOf(outline, 1)];
    const middle = [(left + right) / 2, (top + bottom) / 2] as const;
    const fit = (v: number, i: number): number => ((v - middle[i % 2 === 0 ? 0 : 1]) * L) / (bottom - top);
    const set = (chain: Chain): number[] => bent(chain, 0, -L, bulge).map(fit);
    return { blade: toPath(outline.map(fit)), vein: veins(shape, p.veins, set, tools) };
  },
});

function veins(
  shape: BladeShape,
  wanted: number,
  set: (chain: Chain) => number[],
  { stray }: MotifTools,
): Path[] {
  const outline = bladeHalf(shape);
  const blade = shape.length - shape.stalk;
  const [foot, top] = [-shape.stalk - blade * 0.05, -shape.length + blade * 0.13];
  const thick = Math.max(FINE, Math.min(shape.length * 0.034, shape.half * 0.24));
  const paths = [stroke(set(straight([0, foot], [0, top])), [thick, Math.max(FINE, thick * 0.4)])];
  const fine = Math.max(FINE, thick * 0.62);
  const pairs = Math.min(wanted, Math.floor((blade * 0.68) / (fine * 2.8)));
  for (let k = 0; k < pairs; k++) {
    const u = (k + 0.5) / pairs;
    for (const hand of [-1, 1]) {
      const y = mix(foot, top, 0.03 + 0.84 * u) + (stray(1, 0.5) - 1) * (blade / pairs) * 0.25;
      const rise = stray(blade * mix(0.18, 0.1, u), 0.18);
      const x = halfWidthAt(outline, y - rise) * 0.78;
      // Where the blade is too narrow for a vein there is none.
      if (x < thick * 1.2) continue;
      const side = [0, y, x * 0.36, y - rise * 0.34, x * 0.72, y - rise * 0.62, x, y - rise];
      const spine = side.map((v, i) => (i % 2 === 0 ? v * hand : v));
      paths.push(stroke(set(spine), [fine, Math.max(FINE, thick * 0.36)]));
    }
  }
  return paths;
}
