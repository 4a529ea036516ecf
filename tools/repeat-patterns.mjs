// One pattern for each repeat type, from the studio at Hollin Quay: what docs/repeats.md shows.
import * as s from "sprigwright";

const bloom = { petal: "petal", marking: "ground", centre: "heart", seed: "petal" };
const inlaid = { petal: "petal", marking: "heart", centre: "heart", seed: "petal" };
const green = { blade: "leaf", vein: "ground" };
const twig = { stem: "leaf", leaf: "leaf", berry: "heart" };
const at = (motif, x, y, turn = 0, more = {}) => ({ motif, x, y, turn, ...more });

/** An ogee and a smaller one within it: a frame of two tones that fills its place in the repeat edge to edge. */
const ogeeFrame = s.defineMotif({
  name: "quay/ogee-frame",
  about: "An ogee within an ogee.",
  params: {
    width: s.param.length({ about: "From tip to tip.", min: 10, max: 400 }),
    height: s.param.length({ about: "From tip to tip.", min: 10, max: 400 }),
  },
  parts: ["line", "field", "pip"],
  draw: ({ width, height }) => {
    const ogee = (share, swing = 0.62) =>
      s.ogeeCurve({ width: width * share, height: height * share, swing });
    return { line: ogee(0.955), field: ogee(0.9), pip: ogee(0.13, 0.3) };
  },
});

const asTossed = (colorways, motifs, repeat, options = {}) => ({ colorways, motifs, repeat, options });

const tossed = ({ colorways, motifs, repeat, options }, name, seed) =>
  s.definePattern({ name, seed, repeat, layout: s.toss({ ...options, motifs }), colorways });

const placed = (name, repeat, colorway, places) =>
  s.definePattern({
    name,
    seed: "quay",
    repeat,
    layout: s.placeAt({ places }),
    colorways: { cloth: colorway },
  });

/** Name → pattern, and how many millimetres of cloth its picture is wide. */
export const plates = {
  straight: {
    wide: 300,
    pattern: placed(
      "buoy-foulard",
      s.straight({ width: 36, height: 36 }),
      { ground: "#ece7df", petal: "#d7674a", heart: "#3c4a57", leaf: "#8fa6b2", dot: "#3c4a57" },
      [
        at(
          s.blossom({ size: 19, petals: 6, notch: 0, roundness: 0.5, markings: 1, seeds: 0, roles: inlaid }),
          9,
          9,
        ),
        at(s.star({ size: 13, points: 8, inner: 0.5, roles: { star: "leaf" } }), 27, 27),
        at(s.dot({ size: 3, roles: { dot: "dot" } }), 27, 27),
        at(s.dot({ size: 2.6, roles: { dot: "dot" } }), 27, 9),
        at(s.dot({ size: 2.6, roles: { dot: "dot" } }), 9, 27),
      ],
    ),
  },
  "half-drop": {
    wide: 360,
    pattern: tossed(
      asTossed(
        { cloth: { ground: "#f7ecdc", leaf: "#5d7f63", petal: "#d8604c", heart: "#e8b04a" } },
        [
          { motif: s.blossom({ size: 36, vary: 0.5, roles: bloom }), share: 2 },
          { motif: s.sprig({ length: 50, vary: 0.5, roles: twig }), share: 2 },
          { motif: s.leaf({ length: 22, vary: 0.6, roles: green }), share: 3 },
          { motif: s.blossom({ size: 12, markings: 0, seeds: 0, vary: 0.6, roles: bloom }), share: 3 },
        ],
        s.halfDrop({ width: 150, height: 150 }),
        { gap: 2.4 },
      ),
      "pear-blossom",
      "hollin-quay-7",
    ),
  },
  "half-brick": {
    wide: 300,
    pattern: s.definePattern({
      name: "tide-scallops",
      seed: "pool-7",
      repeat: s.halfBrick({ width: 38, height: 18.24 }),
      layout: s.set({
        columns: 1,
        rows: 1,
        overlap: true,
        motifs: [s.scallop({ size: 37.2, roles: { scallop: "shell", rib: "rib", rim: "rim" } })],
      }),
      colorways: { cloth: { ground: "#132f3b", shell: "#24596a", rib: "#f1c27b", rim: "#d9694f" } },
    }),
  },
  drop: {
    wide: 300,
    pattern: placed(
      "rowan-third",
      s.drop({ width: 40, height: 78, fraction: "1/3" }),
      { ground: "#f2c14e", leaf: "#3d5a45", heart: "#c4472f", dot: "#fff6e3" },
      [
        at(s.sprig({ length: 68, nodes: 6, berries: 6, bend: 0.9, roles: twig }), 18, 39, 0.06),
        at(s.dot({ size: 4, roles: { dot: "dot" } }), 37.5, 28),
        at(s.dot({ size: 2.6, roles: { dot: "dot" } }), 1, 60),
      ],
    ),
  },
  brick: {
    wide: 300,
    pattern: placed(
      "cherry-quarters",
      s.brick({ width: 64, height: 34, fraction: "1/4" }),
      { ground: "#dbe6e4", fruit: "#b23a48", leaf: "#45716c", light: "#f7faf6", dot: "#6f9a97" },
      [
        at(
          s.berry({
            size: 12,
            count: 2,
            roles: { leaf: "leaf", stem: "leaf", fruit: "fruit", highlight: "light" },
          }),
          17,
          18,
        ),
        at(
          s.berry({
            size: 10,
            count: 3,
            roles: { leaf: "leaf", stem: "leaf", fruit: "fruit", highlight: "light" },
          }),
          49,
          17,
          0.03,
          { flip: true },
        ),
        at(s.dot({ size: 2.4, roles: { dot: "dot" } }), 33, 4),
        at(s.dot({ size: 2.4, roles: { dot: "dot" } }), 1, 30),
      ],
    ),
  },
  mirror: {
    wide: 300,
    pattern: placed(
      "high-tide-damask",
      s.mirror({ width: 42, height: 84 }),
      { ground: "#16324a", leaf: "#4f8f92", petal: "#f3e4c8", heart: "#e9a23b" },
      [
        at(s.blossom({ size: 30, petals: 8, notch: 0.2, roles: inlaid }), 0, 20),
        at(s.sprig({ length: 50, nodes: 6, berries: 6, bend: -0.8, roles: twig }), 16.5, 60, -0.035),
        at(s.leaf({ length: 24, bend: 0.9, roles: green }), 23, 16, 0.1),
        at(s.blossom({ size: 20, petals: 6, notch: 0, roundness: 0.5, roles: inlaid }), 42, 62),
        at(s.star({ size: 8, points: 8, roles: { star: "heart" } }), 42, 84),
        at(s.leaf({ length: 26, bend: 0, width: 0.42, roles: green }), 42, 36),
        at(s.dot({ size: 3, roles: { dot: "heart" } }), 25, 41),
        at(s.dot({ size: 2.4, roles: { dot: "petal" } }), 31, 78),
        at(s.dot({ size: 3, roles: { dot: "heart" } }), 0, 44),
      ],
    ),
  },
  turnover: {
    wide: 300,
    pattern: tossed(
      asTossed(
        { cloth: { ground: "#dfe3d0", leaf: "#6f7d4b", petal: "#ffffff", heart: "#c9822f" } },
        [
          { motif: s.sprig({ length: 46, vary: 0.4, roles: twig }), share: 2 },
          { motif: s.blossom({ size: 25, petals: 6, vary: 0.4, roles: inlaid }), share: 2 },
          { motif: s.leaf({ length: 16, vary: 0.4, roles: green }), share: 3 },
          { motif: s.dot({ size: 3.2, roles: { dot: "heart" } }), share: 4 },
        ],
        s.turnover({ width: 100, height: 110 }),
        { gap: 2, direction: "one-way", density: "packed" },
      ),
      "lichen-turnover",
      "both-ways-5",
    ),
  },
  diamond: {
    wide: 270,
    pattern: placed(
      "net-loft-diamond",
      s.diamond({ width: 60, height: 84 }),
      { ground: "#2b2a33", petal: "#c8973f", heart: "#f0d9a0", leaf: "#6d8560", berry: "#a4483a" },
      [
        at(s.blossom({ size: 24, petals: 8, notch: 0, roundness: 0.4, roles: inlaid }), 30, 42),
        ...[0, 0.5].map((turn) =>
          at(s.leaf({ length: 17, bend: 0, width: 0.5, roles: green }), 30, turn === 0 ? 20 : 64, turn),
        ),
        ...[-1, 1].map((side) => at(s.dot({ size: 5, roles: { dot: "berry" } }), 30 + side * 17, 42)),
        // A trellis along two sides of the diamond; the other two are their copies.
        ...[0, 1, 2, 3, 4, 5].flatMap((k) =>
          [-1, 1]
            .map((side) =>
              at(s.dot({ size: k === 0 ? 4.4 : 2.2, roles: { dot: "petal" } }), 30 + side * 5 * k, 7 * k),
            )
            .slice(k === 0 ? 1 : 0),
        ),
      ],
    ),
  },
  ogee: {
    wide: 320,
    pattern: placed(
      "harbour-ogee",
      s.ogee({ width: 80, height: 120 }),
      {
        ground: "#e9dcc3",
        line: "#1f5560",
        field: "#2f6f77",
        pip: "#2f6f77",
        leaf: "#e9dcc3",
        petal: "#d9694f",
        heart: "#f1c27b",
      },
      [
        at(ogeeFrame({ width: 80, height: 120 }), 40, 60),
        ...[-1, 1].map((side) =>
          at(
            s.leaf({ length: 34, bend: 0.8, width: 0.4, roles: { blade: "leaf", vein: "field" } }),
            40 + side * 14,
            74,
            side * 0.09,
            { flip: side > 0 },
          ),
        ),
        at(
          s.leaf({ length: 30, bend: 0, width: 0.34, roles: { blade: "leaf", vein: "field" } }),
          40,
          88,
          0.5,
        ),
        at(s.leaf({ length: 20, bend: 0, width: 0.34, roles: { blade: "leaf", vein: "field" } }), 40, 27),
        at(
          s.blossom({
            size: 30,
            petals: 7,
            roles: { petal: "petal", marking: "heart", centre: "heart", seed: "petal" },
          }),
          40,
          52,
        ),
      ],
    ),
  },
  hexagonal: {
    wide: 300,
    pattern: placed(
      "honeycomb-stars",
      s.hexagonal({ width: 42 }),
      { ground: "#f4ecdd", petal: "#3d8fb0", heart: "#e5b45c", leaf: "#1d3c57" },
      [
        at(
          s.blossom({ size: 31, petals: 6, fullness: 0.2, notch: 0, roundness: 0.55, roles: inlaid }),
          21,
          18,
        ),
        ...[
          [0, 6.06],
          [0, 30.31],
        ].map(([x, y]) => at(s.star({ size: 8, points: 6, inner: 0.5, roles: { star: "leaf" } }), x, y)),
      ],
    ),
  },
  skew: {
    wide: 240,
    pattern: placed(
      "drifting-leaves",
      s.skew({ a: [52, 13], b: [-13, 52] }),
      {
        ground: "#24403f",
        leaf: "#8fb59a",
        vein: "#24403f",
        petal: "#f2b8a0",
        heart: "#e0703f",
        dot: "#f0e3c4",
      },
      [
        at(s.leaf({ length: 36, bend: 0.6, roles: { blade: "leaf", vein: "vein" } }), 22, 26, 0.16),
        at(
          s.blossom({
            size: 19,
            markings: 0,
            roles: { petal: "petal", marking: "heart", centre: "heart", seed: "petal" },
          }),
          46,
          44,
        ),
        at(s.dot({ size: 2.8, roles: { dot: "dot" } }), 40, 22),
        at(s.dot({ size: 2.8, roles: { dot: "dot" } }), 18, 52),
      ],
    ),
  },
};

/**
 * The band and the corners of one border. The large blossom stands on the mitre (x + y is the height), an eighth
 * turned, and so do rail dots: then the corners show them whole.
 */
export const [band, left, right] = ["band", "left-corner", "right-corner"].map((piece) =>
  placed(
    `quay-border-${piece}`,
    s.border({ width: 60, height: 60, margin: 2, piece }),
    { ground: "#fbf4e6", leaf: "#3f6b4f", petal: "#c9573f", heart: "#e2a33a", rail: "#22384d" },
    [
      at(s.blossom({ size: 29, petals: 8, notch: 0.15, roles: inlaid }), 30, 30, 0.125),
      ...[-1, 1].map((side) =>
        at(s.leaf({ length: 21, bend: 0.7 * side, roles: green }), 4, 30 + side * 9, side > 0 ? 0.36 : 0.14),
      ),
      at(s.blossom({ size: 11, markings: 0, seeds: 0, roles: bloom }), 53, 30, 0.25),
      ...Array.from({ length: 10 }, (_, k) => [
        at(s.dot({ size: 2.6, roles: { dot: "rail" } }), 6 * k, 6),
        at(s.dot({ size: 2.6, roles: { dot: "rail" } }), 6 * k, 54),
      ]).flat(),
    ],
  ),
);

/** The same motifs in each of the seventeen plane groups. */
export const groups = Object.fromEntries(
  [
    ...["p1", "p2", "pm", "pg", "cm", "p2mm", "p2mg", "p2gg", "c2mm"],
    ...["p4", "p4mm", "p4gm", "p3", "p3m1", "p31m", "p6", "p6mm"],
  ].map((group) => [group, group]),
);
const inks = [
  { ground: "#f7ecdc", leaf: "#5d7f63", petal: "#d8604c", heart: "#e8b04a" },
  { ground: "#16324a", leaf: "#4f8f92", petal: "#f3e4c8", heart: "#e9a23b" },
  { ground: "#f2c14e", leaf: "#3d5a45", petal: "#fff6e3", heart: "#c4472f" },
  { ground: "#dfe3d0", leaf: "#6f7d4b", petal: "#ffffff", heart: "#c9822f" },
  { ground: "#24403f", leaf: "#8fb59a", petal: "#f2b8a0", heart: "#e0703f" },
  { ground: "#ece7df", leaf: "#3c4a57", petal: "#8fa6b2", heart: "#d7674a" },
];
export const groupPattern = (group, index) => {
  const parts = {
    p1: 1,
    p2: 2,
    pm: 2,
    pg: 2,
    cm: 4,
    p2mm: 4,
    p2mg: 4,
    p2gg: 4,
    c2mm: 8,
    p4: 4,
    p4mm: 8,
    p4gm: 8,
  };
  const sixths = { p3: 3, p3m1: 6, p31m: 6, p6: 6, p6mm: 12 };
  // Cells of such a size that all units are about as large.
  const width = 2 * Math.round((40 * Math.sqrt(parts[group] ?? sixths[group] * 1.15)) / 2);
  const height = /^p[346]/.test(group) ? {} : { height: 2 * Math.round(width / 2) };
  return s.definePattern({
    name: `group-${group}`,
    seed: "seventeen",
    repeat: s.planeGroup({ group, width, ...height, ...(group.match(/^p[12]$/) ? { lean: width / 4 } : {}) }),
    layout: s.toss({
      gap: 1.1,
      density: "packed",
      motifs: [
        { motif: s.leaf({ length: 17, bend: 0.9, roles: green }), share: 2 },
        { motif: s.blossom({ size: 13, markings: 1, seeds: 0, roles: bloom }), share: 1 },
        { motif: s.leaf({ length: 10, bend: 0.9, veins: 3, roles: green }), share: 2 },
        { motif: s.dot({ size: 2.6, roles: { dot: "heart" } }), share: 3 },
      ],
    }),
    colorways: { cloth: inks[index % inks.length] },
  });
};
