// Pears along the slope above Hollin Quay: a motif and a layout that a plugin brings.
import { definePattern, straight } from "sprigwright";
import { pear, windrow } from "./plugins/orchard.ts";

export default definePattern({
  name: "orchard-rows",
  subject: "pear",
  seed: "slope-4",
  repeat: straight({ width: "8in", height: "8in" }),
  layout: windrow({
    columns: 6,
    rows: 4,
    rise: 8,
    motifs: [pear({ height: 38, vary: 0.6 }), pear({ height: 38, girth: 0.8, vary: 0.6, roles: { fruit: "quince" } })],
  }),
  colorways: {
    windfall: { ground: "#f6ead7", stem: "#6b4a34", fruit: "#d9a03c", quince: "#b5502d", light: "#f7dc94", leaf: "#3f6b4f" },
    frost: { ground: "#dbe6e4", stem: "#4d5b5e", fruit: "#8fb0a2", quince: "#e3b9a0", light: "#f7faf6", leaf: "#45716c" },
    cellar: { ground: "#2b2a33", stem: "#8a6a4f", fruit: "#c8973f", quince: "#a4483a", light: "#f0d9a0", leaf: "#6d8560" },
  },
});
