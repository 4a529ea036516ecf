import type { Path } from "../../geometry/path.ts";
import { ellipse, QUARTER } from "../../geometry/shapes.ts";
import { integer, length, number, share } from "../../params/kinds.ts";
import type { LengthParam, NumberParam } from "../../params/param.ts";
import { mirrored, placed, straight, toPath } from "../builders/chain.ts";
import { type Foliage, leaflet, leafletShape } from "../builders/foliage.ts";
import { FINE, stroke } from "../builders/stroke.ts";
import { sway } from "../builders/sway.ts";
import { heading, step, unit, type Vector } from "../builders/vector.ts";
import { defineMotif, type MotifFactory } from "../define.ts";
import type { MotifTools } from "../motif.ts";

const params: {
  /** Diameter of one fruit. 3 to 120 mm; default 13 mm. */
  readonly size: LengthParam;
  /** Fruits on one stem. 1 to 5; default 2. */
  readonly count: NumberParam;
  /** How deep a fruit is drawn in at its stalk: 0 is a ball, 1 a cherry. 0 to 1; default 0.6. */
  readonly dimple: NumberParam;
  /** Length of the shortest stalks as a share of a fruit's diameter. 0.4 to 2.5; default 1.05. */
  readonly stalk: NumberParam;
  /** Leaves where the stalks meet. 0 to 2; default 2. */
  readonly leaves: NumberParam;
} = {
  size: length({ about: "Diameter of one fruit.", min: 3, max: 120, default: 13 }),
  count: integer({ about: "Fruits on one stem.", min: 1, max: 5, default: 2 }),
  dimple: share({
    about: "How deep a fruit is drawn in at its stalk: 0 is a ball, 1 a cherry.",
    default: 0.6,
  }),
  stalk: number({
    about: "Length of the shortest stalks as a share of a fruit's diameter.",
    min: 0.4,
    max: 2.5,
    default: 1.05,
  }),
  leaves: integer({ about: "Leaves where the stalks meet.", min: 0, max: 2, default: 2 }),
};

/** Where fruits hang, in radii of one: a little uneven, as fruits are, and never touching. */
const PLACES: readonly (readonly Vector[])[] = [
  [[0, 0]],
  [
    [-1.2, 0.35],
    [1.2, 0],
  ],
  [
    [-1.3, 0],
    [1.2, -0.2],
    [0.05, 1.95],
  ],
  [
    [-2.2, 0.15],
    [0.05, -0.1],
    [2.3, 0.05],
    [0.25, 2.25],
  ],
  [
    [-2.25, 0.1],
    [0, -0.15],
    [2.3, 0],
    [-1.08, 2.1],
    [1.32, 2],
  ],
];

/** How far twig and leaves rise above where stalks meet, in radii of a fruit, by the number of leaves. */
const CROWN = [0.4, 0.88, 1.16] as const;

/** Fruits on stalks that meet under leaves. The origin is half way up the whole. */
export const berry: MotifFactory<typeof params, "leaf" | "stem" | "fruit" | "highlight"> = defineMotif({
  name: "sprigwright/berry",
  about: "One to five round fruits on stalks that meet under a pair of leaves.",
  params,
  parts: ["leaf", "stem", "fruit", "highlight"],
  draw(p, tools) {
    const R = p.size / 2;
    const places = PLACES[p.count - 1]!;
    const lowest = Math.max(...places.map((place) => place[1])) * R + R;
    const top = -R - p.stalk * p.size;
    const shift = -(lowest + top - CROWN[p.leaves]! * R) / 2;
    const node: Vector = [R * 0.12, top + shift];
    const thick = Math.max(FINE, R * 0.1);
    const stem = [stroke(straight(node, [node[0] - R * 0.1, node[1] - R * 0.3]), [thick * 1.5, thick * 2])];
    const fruit: Path[] = [];
    const highlight: Path[] = [];
    const nudge = (): number => sway(tools, R * 0.07);
    for (const [px, py] of places) {
      const r = tools.stray(R, 0.05);
      const at: Vector = [px * R + nudge(), py * R + shift + nudge()];
      stem.push(stalk(node, at, px * R * 0.3, r * (0.92 - 0.2 * p.dimple), thick, nudge()));
      const half = fruitHalf(p.dimple, tools.stray(1, 0.04), tools.stray(1, 0.04));
      fruit.push(toPath(placed(mirrored(half), at, heading(px * 0.012 + sway(tools, 0.03)), r)));
      highlight.push(...glint(at, r, tools));
    }
    const leaf: Path[] = [];
    for (let k = 0; k < p.leaves; k++) {
      const { blade, rib } = foliage(node, k === 0 ? 1 : -1, R, thick, tools);
      leaf.push(blade);
      stem.push(...rib);
    }
    return { leaf, stem, fruit, highlight };
  },
});

/** A stalk from the node, which it leaves by `aside`, down into a fruit, `inside` mm above its middle. */
function stalk(
  node: Vector,
  fruit: Vector,
  aside: number,
  inside: number,
  thick: number,
  nudge: number,
): Path {
  const foot: Vector = [fruit[0], fruit[1] - inside];
  const pull = (foot[1] - node[1]) * 0.45;
  const lean = unit(fruit[0] * 0.12 + nudge, -1);
  const spine = [...node, node[0] + aside, node[1] + pull * 0.6, ...step(foot, lean, pull), ...foot];
  return stroke(spine, [thick * 1.15, thick]);
}

/** The right half of a fruit of radius 1, from the dimple at its top to its foot. */
function fruitHalf(dimple: number, wide: number, tall: number): number[] {
  const k = QUARTER;
  const [x, dip] = [0.42 * dimple, 0.2 * dimple];
  const cheek = [0, -tall + dip, x * 0.35, -tall + dip, x * 0.5, -tall, x, -tall];
  const side = [x + (wide - x) * k, -tall, wide, -tall * k, wide, 0, wide, tall * k, wide * k, tall, 0, tall];
  return dimple === 0 ? [0, -tall, ...side] : [...cheek, ...side];
}

/** A comma of light on the upper left of a fruit, and a dot after it. */
function glint(at: Vector, r: number, { stray }: MotifTools): Path[] {
  const out = r * 0.62;
  const [from, to] = [stray(0.66, 0.03), stray(0.87, 0.02)];
  const [a, b, dot] = [from, to, to + 0.075].map((turn) => step(at, heading(turn), out)) as [
    Vector,
    Vector,
    Vector,
  ];
  // An arc of a circle: each control is a third of its length off.
  const pull = (6.2832 * (to - from) * out) / 3;
  const spine = [...a, ...step(a, heading(from + 0.25), pull), ...step(b, heading(to + 0.25), -pull), ...b];
  const thick = Math.max(FINE, r * 0.25);
  return [
    stroke(spine, [Math.max(FINE, thick * 0.45), thick]),
    ellipse(dot[0], dot[1], Math.max(FINE / 2, thick * 0.46)),
  ];
}

/** A leaf beside the node with its midrib; the one on the right is the larger. */
function foliage(node: Vector, hand: 1 | -1, R: number, thick: number, { stray }: MotifTools): Foliage {
  const long = stray(R * (hand > 0 ? 2.3 : 1.8), 0.1);
  const shape = leafletShape(long, stray(0.44, 0.12), 0.08, thick * 0.95);
  const way = heading(stray(hand > 0 ? 0.19 : 0.14, 0.12) * hand);
  return leaflet(shape, node, way, stray(0.07, 0.5) * hand);
}
