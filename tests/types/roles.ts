// Compiled, never run: every line below a "@ts-expect-error" must fail to compile, and nothing else may.
import {
  adjusted,
  blossom,
  defineMotif,
  definePattern,
  halfDrop,
  leaf,
  param,
  pen,
  placeAt,
  set,
  toss,
} from "sprigwright";

const repeat = halfDrop({ width: 160, height: "12cm" });
const layout = toss({
  gap: 2.5,
  motifs: [
    { motif: blossom({ roles: { petal: "fruit", marking: "fruit", centre: "seed" } }), share: 1 },
    { motif: leaf({ length: 18, roles: { blade: "moss", vein: "ground" } }) },
  ],
});
const parts = { name: "pears", seed: "s", repeat, layout } as const;

// A mapped part fills the role that was given, and its own name is no role any more.
export const sound = definePattern({
  ...parts,
  colorways: { dawn: { ground: "linen", fruit: "tomato", seed: "gold", moss: "green" } },
});
const ink: string = sound.colorways.dawn.inks.moss;
export const roles: readonly string[] = [ink, ...sound.roles];

definePattern({
  ...parts,
  colorways: {
    // @ts-expect-error: no ink for "moss"
    dawn: { ground: "linen", fruit: "tomato", seed: "gold" },
  },
});

definePattern({
  ...parts,
  colorways: {
    // @ts-expect-error: no ink for the ground
    dawn: { fruit: "tomato", seed: "gold", moss: "green" },
  },
});

definePattern({
  ...parts,
  colorways: {
    // @ts-expect-error: nothing draws a role "petal", since that part was mapped to "fruit"
    dawn: { ground: "linen", fruit: "tomato", seed: "gold", moss: "green", petal: "red" },
  },
});

definePattern({
  ...parts,
  colorways: {
    dawn: { ground: "linen", fruit: "tomato", seed: "gold", moss: "green" },
    // @ts-expect-error: the second colorway is held to the same roles
    dusk: { ground: "linen", fruit: "tomato", seed: "gold", mos: "green" },
  },
});

definePattern({
  ...parts,
  // @ts-expect-error: nothing draws a role "blade"
  roles: ["ground", "blade"],
  colorways: { dawn: { ground: "linen", fruit: "tomato", seed: "gold", moss: "green" } },
});

// @ts-expect-error: a colorway that was not declared
sound.colorways.dusk;
// @ts-expect-error: a role that nothing draws
sound.colorways.dawn.inks.petal;

// Other layouts collect roles alike.
export const byHand = definePattern({
  name: "by-hand",
  seed: "s",
  repeat,
  layout: placeAt({ places: [{ motif: leaf({ roles: { vein: "rib" } }), x: 1, y: "1in" }] }),
  colorways: { one: { ground: "white", blade: "green", rib: "black" } },
});
definePattern({
  name: "in-rows",
  seed: "s",
  repeat,
  layout: set({ motifs: [leaf(), blossom()], columns: 2, rows: 2 }),
  colorways: {
    // @ts-expect-error: the blossom's parts have no ink
    one: { ground: "white", blade: "green", vein: "black" },
  },
});

// A motif of one's own is typed by its parts and its parameters.
const kite = defineMotif({
  name: "test/kite",
  about: "A kite.",
  params: {
    span: param.length({ about: "Across.", min: 1, max: 99 }),
    tails: param.integer({ about: "Tails.", min: 0, max: 9, default: 1 }),
  },
  parts: ["sail", "tail"],
  draw: ({ span, tails }) => ({ sail: pen().moveTo(span, tails).path(), tail: [] }),
});
definePattern({
  name: "kites",
  seed: "s",
  repeat,
  layout: toss({ motifs: [{ motif: kite({ span: "3cm", roles: { tail: "ribbon" } }) }] }),
  colorways: { one: { ground: "white", sail: "red", ribbon: "blue" } },
});
// @ts-expect-error: the span must be given
kite();
// @ts-expect-error: the span must be given, whatever else is
kite({ tails: 2 });
// @ts-expect-error: no part "bow" to map
kite({ span: 3, roles: { bow: "ribbon" } });
defineMotif({
  name: "test/shy",
  about: "Draws less than it says.",
  params: {},
  parts: ["a", "b"],
  // @ts-expect-error: the part "b" is not drawn
  draw: () => ({ a: pen().path() }),
});

// A layout within a layout, and motifs that changes by hand bring in, are collected too.
export const tidied = definePattern({
  name: "tidied",
  seed: "s",
  repeat,
  layout: adjusted({
    layout: toss({ motifs: [{ motif: leaf({ roles: { vein: "rib" } }) }] }),
    changes: [
      { do: "move", id: "1-1", dx: "3mm" },
      { do: "swap", id: "1-2", motif: leaf({ roles: { vein: "rib" } }) },
      { do: "add", id: "moon", motif: kite({ span: 9, roles: { tail: "ribbon" } }), x: 3, y: 4 },
    ],
  }),
  colorways: { one: { ground: "white", blade: "green", rib: "black", sail: "red", ribbon: "blue" } },
});
definePattern({
  name: "tidied",
  seed: "s",
  repeat,
  layout: adjusted({ layout: toss({ motifs: [{ motif: leaf() }] }), changes: [{ do: "remove", id: "1-1" }] }),
  colorways: {
    // @ts-expect-error: the vein of the inner layout's leaf has no ink
    one: { ground: "white", blade: "green" },
  },
});
const inner = toss({ motifs: [{ motif: leaf() }] });
// @ts-expect-error: no such change
adjusted({ layout: inner, changes: [{ do: "nudge", id: "1-1", dx: 3 }] });
// @ts-expect-error: a move has no "by"
adjusted({ layout: inner, changes: [{ do: "move", id: "1-1", by: 3 }] });
// @ts-expect-error: a turn says by how much
adjusted({ layout: inner, changes: [{ do: "turn", id: "1-1" }] });
// @ts-expect-error: a hold says where
adjusted({ layout: inner, changes: [{ do: "hold", id: "1-1", x: 3 }] });
// @ts-expect-error: no such seat
toss({ motifs: [{ motif: leaf(), seat: "corners" }] });
