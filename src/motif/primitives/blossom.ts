import type { Path } from "../../geometry/path.ts";
import { integer, length, number, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { cosTurns, sinTurns } from "../../seed/trigonometry.ts";
import { bent, type Chain, mirrored, placed, toPath } from "../builders/chain.ts";
import { dab } from "../builders/dab.ts";
import { petalHalf } from "../builders/petal.ts";
import { FINE, stroke } from "../builders/stroke.ts";
import { sway } from "../builders/sway.ts";
import { heading, mix } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";
import type { MotifTools } from "../motif.ts";

const params: {
  /** Across: diameter of the circle that the petals touch. 6 to 250 mm; default 30 mm. */
  readonly size: LengthParam;
  /** How many petals. 3 to 12; default 5. */
  readonly petals: NumberParam;
  /** How much of its room each petal fills: 0 is airy, 1 overlaps its neighbours. 0 to 1; default 0.42. */
  readonly fullness: NumberParam;
  /** How broad the petals end: 0 is pointed, 1 is full. 0 to 1; default 0.8. */
  readonly roundness: NumberParam;
  /** How deep each petal's end is notched. 0 to 1; default 0.35. */
  readonly notch: NumberParam;
  /** Diameter of the centre as a share of the size. 0.14 to 0.5; default 0.26. */
  readonly centre: NumberParam;
  /** Fine streaks on each petal, from the centre outwards; fewer are drawn where petals are narrow. 0 to 3; default 3. */
  readonly markings: NumberParam;
  /** Tiny dots in a circle on the centre, around one more; fewer are drawn where there is no room. 0 to 16; default 7. */
  readonly seeds: NumberParam;
} = {
  size: length({
    about: "Across: diameter of the circle that the petals touch.",
    min: 6,
    max: 250,
    default: 30,
  }),
  petals: integer({ about: "How many petals.", min: 3, max: 12, default: 5 }),
  fullness: share({
    about: "How much of its room each petal fills: 0 is airy, 1 overlaps its neighbours.",
    default: 0.42,
  }),
  roundness: share({ about: "How broad the petals end: 0 is pointed, 1 is full.", default: 0.8 }),
  notch: share({ about: "How deep each petal's end is notched.", default: 0.35 }),
  centre: number({
    about: "Diameter of the centre as a share of the size.",
    min: 0.14,
    max: 0.5,
    default: 0.26,
  }),
  markings: integer({
    about: "Fine streaks on each petal, from the centre outwards; fewer are drawn where petals are narrow.",
    min: 0,
    max: 3,
    default: 3,
  }),
  seeds: integer({
    about: "Tiny dots in a circle on the centre, around one more; fewer are drawn where there is no room.",
    min: 0,
    max: 16,
    default: 7,
  }),
};

/** Which streaks there are on a petal: 0 is the middle one, -1 and 1 lie to its sides. */
const STREAKS: readonly (readonly number[])[] = [[], [0], [-1, 1], [-1, 0, 1]];

/** A blossom seen from above. The origin is its middle; a petal points up. */
export const blossom: MotifFactory<typeof params, "petal" | "marking" | "centre" | "seed"> = defineMotif({
  name: "sprigwright/blossom",
  about: "A blossom from above: petals with fine markings around a seeded centre.",
  params,
  parts: ["petal", "marking", "centre", "seed"],
  draw(p, tools) {
    const R = p.size / 2;
    const core = R * p.centre;
    // A petal's sides run along the borders to its neighbours, apart from them by half of the gap (shares of R).
    const border = sinTurns(0.5 / p.petals) / cosTurns(0.5 / p.petals);
    const gap = mix(0.075, -0.06, p.fullness);
    const from = p.centre * 0.8;
    const least = FINE / p.size;
    const half = Math.max(least * 1.8, Math.min(0.56, border * mix(0.42, 0.56, p.roundness) - gap));
    const base = Math.max(least, Math.min(half * 0.7, from * border - gap));
    const thick = Math.max(FINE, R * 0.052);
    const streaks = STREAKS[Math.min(p.markings, Math.floor((2 * half * R) / (thick * 2.4)))]!;
    const petal: Path[] = [];
    const marking: Path[] = [];
    for (let k = 0; k < p.petals; k++) {
      const notch = tools.stray(p.notch, 0.25) * p.roundness;
      const shape = { half: tools.stray(half, 0.07), base, from, roundness: p.roundness, notch };
      const long = tools.stray(R, 0.07);
      const up = heading((k + sway(tools, 0.06)) / p.petals);
      const bulge = sway(tools, 0.05);
      const set = (chain: Chain): number[] => placed(bent(chain, 0, -1, bulge), [0, 0], up, long);
      petal.push(toPath(set(mirrored(petalHalf(shape)))));
      for (const side of streaks)
        marking.push(stroke(set(streak(side, from, half, tools)), [thick, Math.max(FINE, thick * 0.55)]));
    }
    return { petal, marking, centre: dab(0, 0, core, tools, 0.06), seed: seeds(core, R, p.seeds, tools) };
  },
});

/** The spine of a streak on an upright petal of length 1: from under the centre, fanning out to a side. */
function streak(side: number, from: number, half: number, { stray }: MotifTools): number[] {
  const to = stray(side === 0 ? 0.7 : 0.58, 0.1);
  const [start, end] = [side * from * 0.2, side * half * 0.42];
  return [start, -from, (start + end) / 2, -mix(from, to, 0.35), end, -mix(from, to, 0.7), end, -to];
}

function seeds(core: number, R: number, wanted: number, tools: MotifTools): Path[] {
  const r = Math.max(FINE / 2, Math.min(R * 0.034, core * 0.16));
  const orbit = core * 0.6;
  const room = Math.floor((6.28 * orbit) / (r * 2.7));
  const count = Math.min(wanted, room);
  if (count === 0) return [];
  const around = Array.from({ length: count }, (_, k) => {
    const [x, y] = heading((k + sway(tools, 0.12)) / count);
    const out = tools.stray(orbit, 0.1);
    return dab(x * out, y * out, r, tools, 0.14);
  });
  return [...around, dab(0, 0, r * 1.15, tools, 0.14)];
}
