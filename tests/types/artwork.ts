// Compiled, never run: the roles of imported drawings and of letters are known once they are named.
import { definePattern, straight, toss } from "sprigwright";
import { readArtwork } from "sprigwright/artwork";

const boat = readArtwork("<svg/>", { size: "3cm", roles: { "#ff822d": "sail", "#433b6b": "hull" } });
const parts = {
  name: "fleet",
  seed: "s",
  repeat: straight({ width: 90, height: 90 }),
  layout: toss({ motifs: [{ motif: boat }] }),
} as const;
export const fleet = definePattern({
  ...parts,
  colorways: { one: { ground: "white", sail: "red", hull: "navy" } },
});
definePattern({
  ...parts,
  colorways: {
    // @ts-expect-error: no ink for the hull
    one: { ground: "white", sail: "red" },
  },
});
definePattern({
  ...parts,
  colorways: {
    // @ts-expect-error: nothing draws a mast
    one: { ground: "white", sail: "red", hull: "navy", mast: "tan" },
  },
});
// @ts-expect-error: no option "scale"
readArtwork("<svg/>", { scale: 3, roles: { "#ff822d": "sail" } });
