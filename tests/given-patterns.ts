// Small made-up patterns that many tests start from.

import { defineLayout } from "../src/layout/define.ts";
import type { Placement } from "../src/layout/layout.ts";
import { placeAt } from "../src/layout/place-at.ts";
import { motif } from "../src/motif/param.ts";
import { list } from "../src/params/compound.ts";
import { definePattern } from "../src/pattern/pattern.ts";
import { halfDrop } from "../src/repeat/half-drop.ts";
import type { RepeatUse } from "../src/repeat/repeat.ts";
import { buoy, pebble } from "./given.ts";

export const inks = { dawn: { ground: "#f6ead7", float: "#c8553d", flag: "#28536b", pebble: "#7d8a6a" } };

/** A quiet pattern of three motifs by hand, some across the edges. */
export const shore = definePattern({
  name: "shore",
  subject: "buoy",
  seed: "harbour-1",
  repeat: halfDrop({ width: 60, height: 40 }),
  layout: placeAt({
    places: [
      { motif: buoy({ size: 14 }), x: 10, y: 8, turn: 0.1 },
      { motif: buoy({ size: 14, vary: 0.5 }), x: 59, y: 39, turn: 0.6, flip: true },
      { motif: pebble({ size: 9 }), x: 36, y: 20, scale: 1.5 },
    ],
  }),
  colorways: inks,
});

/** A layout that places whatever it is told, for tests of what layouts may return. */
export const told = (motifs: ReturnType<typeof pebble>[], placed: unknown) =>
  defineLayout({
    name: "test/told",
    about: "Places what it is told.",
    params: { motifs: list(motif({ about: "A motif." }), { about: "Motifs.", min: 1, max: 9 }) },
    place: (options, tools) => {
      for (const use of options.motifs) tools.draw(use);
      return (
        typeof placed === "function" ? (placed as (t: typeof tools) => unknown)(tools) : placed
      ) as Placement[];
    },
  })({ motifs });

/** A pattern of pebbles in places that a test says. */
export const stones = (placed: unknown, repeat: RepeatUse = halfDrop({ width: 60, height: 40 })) =>
  definePattern({
    name: "stones",
    seed: "s",
    repeat,
    layout: told([pebble({ size: 12 })], placed),
    colorways: { plain: { ground: "#ffffff", pebble: "#336699" } },
  });

export const stone = (id: string, x: number, y: number, more: Partial<Placement> = {}): Placement => ({
  id,
  motif: 0,
  x,
  y,
  turn: 0,
  scale: 1,
  flip: false,
  ...more,
});
