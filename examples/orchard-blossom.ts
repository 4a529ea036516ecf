// The studio's bestseller: pear blossom tossed over a half-drop. Three roles, five colorways.
import { blossom, definePattern, halfDrop, leaf, sprig, toss } from "sprigwright";

const bloom = { petal: "petal", marking: "ground", centre: "heart", seed: "petal" } as const;
const green = { blade: "leaf", vein: "ground" } as const;
const twig = { stem: "leaf", leaf: "leaf", berry: "heart" } as const;

export default definePattern({
  name: "orchard-blossom",
  subject: "pear blossom",
  seed: "ferry-lane-9",
  repeat: halfDrop({ width: "6.4in", height: "6.4in" }),
  layout: toss({
    gap: 2.4,
    direction: "tossed",
    motifs: [
      { motif: blossom({ size: 34, vary: 0.5, roles: bloom }), share: 2 },
      { motif: blossom({ size: 22, vary: 0.6, roles: bloom }), share: 2 },
      { motif: sprig({ length: 46, vary: 0.5, roles: twig }), share: 2 },
      { motif: leaf({ length: 22, vary: 0.6, roles: green }), share: 3 },
      { motif: blossom({ size: 11, markings: 0, seeds: 0, vary: 0.6, roles: bloom }), share: 3 },
    ],
  }),
  colorways: {
    dawn: { ground: "#f7ecdc", leaf: "#5d7f63", petal: "#d8604c", heart: "#e8b04a" },
    "high-tide": { ground: "#16324a", leaf: "#4f8f92", petal: "#f3e4c8", heart: "#e9a23b" },
    lichen: { ground: "#dfe3d0", leaf: "#6f7d4b", petal: "#ffffff", heart: "#c9822f" },
    quince: { ground: "#f2c14e", leaf: "#3d5a45", petal: "#fff6e3", heart: "#c4472f" },
    "net-loft": { ground: "#ece7df", leaf: "#3c4a57", petal: "#8fa6b2", heart: "#d7674a" },
  },
});
