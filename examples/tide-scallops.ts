// Shells from the tide pools, set edge to edge like roof slates: a small coordinate for lining and borders.
import { definePattern, halfBrick, scallop, set } from "sprigwright";

const shell = { scallop: "shell", rib: "rib", rim: "rim" } as const;

export default definePattern({
  name: "tide-scallops",
  subject: "scallop shell",
  seed: "pool-7",
  repeat: halfBrick({ width: "1.2in", height: "0.6in" }),
  layout: set({
    columns: 1,
    rows: 1,
    overlap: true,
    motifs: [scallop({ size: "1.2in", roles: shell })],
  }),
  colorways: {
    shallows: { ground: "#eef3ee", shell: "#9cc5c1", rib: "#2f6f77", rim: "#f4d9b8" },
    rockpool: { ground: "#132f3b", shell: "#24596a", rib: "#f1c27b", rim: "#d9694f" },
  },
});
