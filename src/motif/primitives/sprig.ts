import type { Path } from "../../geometry/path.ts";
import { choice, integer, length, number, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam, Param } from "../../params/param.ts";
import { tipRadius } from "../builders/blade.ts";
import { type Chain, pointOn, wayOn } from "../builders/chain.ts";
import { dab } from "../builders/dab.ts";
import { type Foliage, leaflet, leafletShape } from "../builders/foliage.ts";
import { FINE, stroke } from "../builders/stroke.ts";
import { sway } from "../builders/sway.ts";
import { mix, step, turned, unit, type Vector } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";

type Arrangement = "alternate" | "opposite";

const params: {
  /** Height, from the foot of the stem to the tip of the last leaf. 14 to 400 mm; default 60 mm. */
  readonly length: LengthParam;
  /** Places along the stem where leaves grow, besides the leaf at its end. 1 to 12; default 5. */
  readonly nodes: NumberParam;
  /** One leaf at each place, left and right in turn, or two that face each other. Default "alternate". */
  readonly arrangement: Param<Arrangement, Arrangement, true>;
  /** Length of the longest leaves as a share of the whole. 0.12 to 0.45; default 0.27. */
  readonly leaf: NumberParam;
  /** Width of a leaf as a share of its length. 0.18 to 0.7; default 0.42. */
  readonly leafWidth: NumberParam;
  /** How blunt the leaves are: 0 is pointed, 1 is round. 0 to 1; default 0.1. */
  readonly roundness: NumberParam;
  /** Angle between stem and leaf, in turns. 0.05 to 0.22; default 0.125. */
  readonly spread: NumberParam;
  /** Berries on stalks of their own, at most one at each place; 0 for none. 0 to 12; default 4. */
  readonly berries: NumberParam;
  /** How far the stem bows: its middle to the left (above 0) or to the right (below 0). -1 to 1; default 0.5. */
  readonly bend: NumberParam;
} = {
  length: length({
    about: "Height, from the foot of the stem to the tip of the last leaf.",
    min: 14,
    max: 400,
    default: 60,
  }),
  nodes: integer({
    about: "Places along the stem where leaves grow, besides the leaf at its end.",
    min: 1,
    max: 12,
    default: 5,
  }),
  arrangement: choice({
    about: "One leaf at each place, left and right in turn, or two that face each other.",
    of: ["alternate", "opposite"],
    default: "alternate",
  }),
  leaf: number({
    about: "Length of the longest leaves as a share of the whole.",
    min: 0.12,
    max: 0.45,
    default: 0.27,
  }),
  leafWidth: number({
    about: "Width of a leaf as a share of its length.",
    min: 0.18,
    max: 0.7,
    default: 0.42,
  }),
  roundness: share({ about: "How blunt the leaves are: 0 is pointed, 1 is round.", default: 0.1 }),
  spread: number({ about: "Angle between stem and leaf, in turns.", min: 0.05, max: 0.22, default: 0.125 }),
  berries: integer({
    about: "Berries on stalks of their own, at most one at each place; 0 for none.",
    min: 0,
    max: 12,
    default: 4,
  }),
  bend: number({
    about: "How far the stem bows: its middle to the left (above 0) or to the right (below 0).",
    min: -1,
    max: 1,
    default: 0.5,
  }),
};

/** Where leaves begin and end along the stem. */
const [LOWEST, HIGHEST] = [0.2, 0.86];

/** A curved stem with leaves and berries. The origin is half way up; the tip is up. */
export const sprig: MotifFactory<typeof params, "leaf" | "stem" | "berry"> = defineMotif({
  name: "sprigwright/sprig",
  about: "A sprig: a tapered, gently curved stem with leaves along it and a few berries.",
  params,
  parts: ["leaf", "stem", "berry"],
  draw(p, tools) {
    const { stray } = tools;
    const L = stray(p.length, 0.06);
    const [thick, thin] = [Math.max(FINE * 1.6, L * 0.024), Math.max(FINE, L * 0.011)];
    const bow = Math.max(-1.2, Math.min(1.2, p.bend + sway(tools, 0.5)));
    const [longest, last] = [L * p.leaf, L * p.leaf * 0.86];
    const end = leafletShape(last, p.leafWidth, p.roundness, thin * 0.9);
    const spine = stemSpine(L, bow, last, thick / 2, tipRadius(end));
    const tip = pointOn(spine, 1);

    const stem = [stroke(spine, [thick, thin])];
    const leaf: Path[] = [];
    const berry: Path[] = [];
    const grow = ({ blade, rib }: Foliage): void => {
      leaf.push(blade);
      stem.push(...rib);
    };
    const bearing = spacedNodes(p.nodes, p.berries);
    for (let k = 0; k < p.nodes; k++) {
      const u = p.nodes === 1 ? 0.5 : k / (p.nodes - 1);
      const t = mix(LOWEST, HIGHEST, u);
      const [at, way] = [pointOn(spine, t), wayOn(spine, t)];
      const hand = k % 2 === 0 ? -1 : 1;
      for (const side of p.arrangement === "opposite" ? [-1, 1] : [hand]) {
        const angle = stray(p.spread * mix(1.15, 0.8, u), 0.14) * side;
        const long = stray(longest * mix(1, 0.66, u * u), 0.1);
        const shape = leafletShape(long, stray(p.leafWidth, 0.12), p.roundness, thin * 0.9);
        grow(leaflet(shape, at, turned(way, angle), stray(-0.045, 0.8) * side));
      }
      if (!bearing.includes(k)) continue;
      const out = turned(way, stray(p.spread * 1.05, 0.12) * (p.arrangement === "opposite" ? hand : -hand));
      const stalk = stray(L * 0.105, 0.12);
      const top = step(at, out, stalk);
      stem.push(
        stroke(
          [...at, ...step(at, way, stalk * 0.4), ...step(top, out, stalk * -0.3), ...top],
          [thin, thin * 0.9],
        ),
      );
      const r = Math.max(FINE, stray(L * 0.033, 0.1));
      berry.push(dab(...step(top, out, r * 0.7), r, tools, 0.06));
    }
    grow(leaflet(end, tip, wayOn(spine, 1), 0));
    return { leaf, stem, berry };
  },
});

/**
 * The stem from its foot to where the last leaf starts, so that the whole is exactly `L` high: the round foot
 * (radius `foot`) rests on L/2, and the round tip of a leaf `last` long (radius `tip`) touches -L/2.
 */
function stemSpine(L: number, bow: number, last: number, foot: number, tip: number): Chain {
  const up = unit(bow * 0.45, -1);
  // Leaves and bow are about as far to the one side as foot and tip are to the other.
  const x = bow * L * 0.16;
  const end: Vector = [x - up[0] * last, -L / 2 + tip * (1 + up[1]) - up[1] * last];
  const rise = L * 0.3;
  return [x, L / 2 - foot, x - bow * rise * 0.5, L / 2 - foot - rise, ...step(end, up, -rise), ...end];
}

/** `count` of the nodes, evenly spaced. */
function spacedNodes(nodes: number, wanted: number): number[] {
  const count = Math.min(nodes, wanted);
  return Array.from({ length: count }, (_, k) => Math.floor(((k + 0.5) * nodes) / count));
}
