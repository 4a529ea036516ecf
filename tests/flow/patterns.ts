// Patterns that go through the whole flow, one for each repeat type. Sizes are whole pixels at 90 dpi.
import {
  blossom,
  definePattern,
  halfBrick,
  halfDrop,
  leaf,
  mirror,
  type Pattern,
  type RepeatUse,
  ring,
  sprig,
  straight,
  toss,
} from "../../src/index.ts";

const size = { width: "4in", height: "3.2in" } as const;

/** Every repeat type, by a name for the test's sentence. */
export const repeats: Readonly<Record<string, RepeatUse>> = {
  straight: straight(size),
  "half-drop": halfDrop(size),
  "half-brick": halfBrick(size),
  "mirror across": mirror({ ...size, axis: "across" }),
  "mirror down": mirror({ ...size, axis: "down" }),
  "mirror both ways": mirror({ ...size, axis: "both" }),
};

/** A small meadow: four kinds of motifs, five roles, one knocked out. */
export function meadow(repeat: RepeatUse, seed: string): Pattern {
  return definePattern({
    name: "meadow",
    seed,
    repeat,
    layout: toss({
      gap: 1.5,
      motifs: [
        { motif: blossom({ size: 26, vary: 0.5, roles: { marking: "ground", seed: "petal" } }), share: 1 },
        { motif: sprig({ length: 34, vary: 0.5 }), share: 1 },
        { motif: leaf({ length: 15, vary: 0.4, roles: { blade: "leaf", vein: "ground" } }), share: 2 },
        { motif: ring({ size: 6 }), share: 2 },
      ],
    }),
    colorways: {
      noon: {
        ground: "#f6ead7",
        petal: "#c9573f",
        centre: "#e2a33a",
        stem: "#22384d",
        leaf: "#3f6b4f",
        berry: "#8e2f3c",
        ring: "#7d9a79",
        core: "#22384d",
      },
    },
  });
}
