// Real drawings as motifs: flat SVG drawings from the npm package @iconify-json/fluent-emoji-flat (MIT licence, not
// part of Sprigwright). Before you sell a print that holds others' drawings, ask your own counsel about their licence.
import { createRequire } from "node:module";
import { definePattern, dot, halfBrick, toss } from "sprigwright";
import { readArtwork } from "sprigwright/artwork";

const { icons } = createRequire(import.meta.url)("@iconify-json/fluent-emoji-flat/icons.json");
// A dozen fills become five roles.
const roles = {
  ...{ "#00a6ed": "sea", "#0074ba": "deep", "#533566": "deep", "#1c1c1c": "deep", "#212121": "deep", "#ca0b4a": "deep" },
  ...{ "#ffffff": "foam", "#d3d3d3": "foam", "#9b9b9b": "sand", "#a7a8b7": "sand", "#fcd53f": "sand" },
  ...{ "#ff9f2e": "buoy", "#ff8257": "buoy", "#f8312f": "buoy", "#f92f60": "buoy" },
} as const;
const drawing = (name: string, size: number) =>
  readArtwork(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32">${icons[name].body}</svg>`, { size, roles });

export default definePattern({
  name: "harbour-fleet",
  subject: "harbour",
  seed: "quay-2",
  repeat: halfBrick({ width: "8in", height: "6.4in" }),
  layout: toss({
    gap: 2.6,
    direction: "one-way",
    flip: true,
    motifs: [
      { motif: drawing("sailboat", 44), share: 2 },
      { motif: drawing("ring-buoy", 25), share: 2 },
      { motif: drawing("fish", 26), share: 3 },
      { motif: drawing("crab", 27), share: 2 },
      { motif: drawing("spiral-shell", 19), share: 3 },
      { motif: dot({ size: 3.4, roles: { dot: "sea" } }), share: 12 },
      { motif: dot({ size: 2.2, roles: { dot: "sand" } }), share: 16 },
    ],
  }),
  colorways: {
    regatta: { ground: "#ecdfc6", sea: "#3d8fb0", deep: "#1d3c57", foam: "#fffdf6", sand: "#e5b45c", buoy: "#d9583f" },
    night: { ground: "#15283a", sea: "#3f7f96", deep: "#0b1622", foam: "#efe6d2", sand: "#c99a4b", buoy: "#d2563f" },
  },
});
