// Compiled, never run: layouts within layouts hand their motifs' roles on, and areas are typed.
import {
  definePattern,
  dot,
  layered,
  leaf,
  ogeeCurve,
  pen,
  placeAt,
  star,
  straight,
  stripes,
  toss,
  unitOutline,
} from "sprigwright";

const repeat = straight({ width: 90, height: 90 });
const layout = layered({
  layouts: [
    placeAt({ places: [{ motif: star({ roles: { star: "hero" } }), x: 1, y: 2 }] }),
    toss({ motifs: [{ motif: leaf({ roles: { vein: "ground" } }) }] }),
    layered({ layouts: [toss({ motifs: [{ motif: dot({ roles: { dot: "seed" } }) }] })] }),
  ],
});
const parts = { name: "layers", seed: "s", repeat, layout } as const;
export const sound = definePattern({
  ...parts,
  roles: ["ground", "seed", "blade", "hero"],
  colorways: { one: { ground: "white", hero: "red", blade: "green", seed: "gold" } },
});
definePattern({
  ...parts,
  colorways: {
    // @ts-expect-error: no ink for the innermost layout's motif
    one: { ground: "white", hero: "red", blade: "green" },
  },
});
definePattern({
  ...parts,
  colorways: {
    // @ts-expect-error: nothing draws a role "star", since that part was mapped to "hero"
    one: { ground: "white", hero: "red", blade: "green", seed: "gold", star: "red" },
  },
});
// @ts-expect-error: no option "gap"
layered({ layouts: [layout], gap: 2 });
// @ts-expect-error: a list of layouts
layered({ layouts: layout });

const motifs = [{ motif: dot() }];
toss({ motifs, inside: "M0 0H40V40H0Z", edge: "2mm" });
toss({ motifs, inside: pen().moveTo(0, 0).lineTo(9, 0).lineTo(0, 9).path(), outside: stripes({ count: 3 }) });
toss({ motifs, inside: ogeeCurve({ width: 80, height: 90 }), outside: unitOutline(repeat) });
export const inked = definePattern({
  name: "inside",
  seed: "s",
  repeat,
  layout: toss({ motifs, inside: ogeeCurve({ width: 80, height: 90 }) }),
  colorways: {
    // @ts-expect-error: an area fills no role
    one: { ground: "white", dot: "red", points: "blue" },
  },
});
// @ts-expect-error: an area, not a number
toss({ motifs, inside: 40 });
// @ts-expect-error: no such run
stripes({ count: 3, run: "sideways" });
// @ts-expect-error: the count must be given
stripes({ share: 0.5 });
