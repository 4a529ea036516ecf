// The walled garden behind the studio: one pattern, and twelve colorways planned out of four palettes.
import {
  blossom,
  bud,
  buildTile,
  colorways,
  definePattern,
  dot,
  fern,
  halfDrop,
  leaf,
  palette,
  sprig,
  toss,
  withColorways,
} from "sprigwright";

const firstFerry = palette({
  name: "first-ferry",
  inks: {
    ...{ chalk: "#f7efe2", shell: "#f2cdb8", coral: "#e0705a", rust: "#a9432f" },
    ...{ sage: "#8ea68a", kelp: "#3f5f4e", butter: "#efc065", tide: "#1f3340" },
  },
});
const deepWater = palette({
  name: "deep-water",
  inks: {
    ...{ foam: "#eef3ee", mist: "#bcd3d6", sea: "#4f9aa6", petrol: "#1d5566" },
    ...{ midnight: "#12263a", buoy: "#e8643c", rope: "#d8b983", wine: "#7a2c3f" },
  },
});
const orchardLane = palette({
  name: "orchard-lane",
  inks: {
    ...{ cream: "#fbf3df", quince: "#e9b83f", pear: "#b7c26a", leaf: "#5c7c3f" },
    ...{ moss: "#33472e", plum: "#6b3552", peach: "#f0a583", brick: "#b9472f" },
  },
});
const netLoft = palette({
  name: "net-loft",
  inks: {
    ...{ linen: "#ebe4d6", fog: "#c3c5c0", slate: "#6e7b84", tar: "#2b2d33" },
    ...{ lilac: "#b8a4c4", violet: "#6c4f8c", mustard: "#d6a632", rose: "#d98b94" },
  },
});

const large = { petal: "petal", marking: "blush", centre: "heart", seed: "blush" } as const;
const small = { petal: "blush", marking: "blush", centre: "heart", seed: "blush" } as const;

const garden = definePattern({
  name: "quay-garden",
  subject: "garden flower",
  seed: "walled-garden-3",
  repeat: halfDrop({ width: "6.4in", height: "6.4in" }),
  layout: toss({
    gap: 2.2,
    motifs: [
      { motif: blossom({ size: 40, vary: 0.5, roles: large }), share: 2 },
      { motif: blossom({ size: 23, vary: 0.6, roles: small }), share: 2 },
      { motif: bud({ height: 38, vary: 0.5, roles: { stem: "leaf" } }), share: 2 },
      { motif: fern({ height: 48, vary: 0.5, roles: { leaf: "moss", stem: "moss" } }), share: 2 },
      { motif: leaf({ length: 26, vary: 0.6, roles: { blade: "leaf", vein: "moss" } }), share: 3 },
      { motif: sprig({ length: 36, vary: 0.6, roles: { stem: "moss", leaf: "moss", berry: "heart" } }), share: 2 },
      { motif: dot({ size: 3.2, roles: { dot: "heart" } }), share: 3 },
    ],
  }),
  colorways: {
    dawn: { ground: "#f7efe2", petal: "#e0705a", blush: "#f2cdb8", heart: "#efc065", leaf: "#3f5f4e", moss: "#8ea68a" },
  },
});

const tile = await buildTile(garden);
const planned = colorways(tile, { palettes: [firstFerry, deepWater, orchardLane, netLoft], count: 12 });

export default withColorways(tile, planned);
