import { optional } from "../../params/compound.ts";
import { integer } from "../../params/kinds.ts";
import type { Param } from "../../params/param.ts";
import { wrapTurns } from "../../seed/trigonometry.ts";
import type { Palette } from "../palette.ts";
import { palette } from "../param.ts";
import { changed } from "./changed.ts";
import { defineScheme, type SchemeFactory } from "./define.ts";
import { natural } from "./natural.ts";
import { apartSquared } from "./oklch.ts";
import type { Family } from "./ranges.ts";
import type { SchemeColor, SchemeTools } from "./scheme.ts";

/** Parameters of a family. */
export type FamilySpec = {
  /** Number of inks, the ground included, 2 to 8; default 6. */
  readonly count: Param<number, number, true>;
  /** A palette to change into the family: its inks keep names and order. Without it a palette is made. */
  readonly of: Param<Palette, Palette | undefined, true>;
};

const params: FamilySpec = {
  count: integer({
    about: "Number of inks, the ground included; a palette that is changed keeps its own.",
    min: 2,
    max: 8,
    default: 6,
  }),
  of: optional(palette({ about: "A palette to change into the family; without it one is made." })),
};

/** Colours tried for each ink: the one farthest from those before it is taken. */
const TRIES = 4;

/** A scheme piece of a family. */
export const family = (of: Family): SchemeFactory<FamilySpec> =>
  defineScheme({
    name: of.name,
    about: of.about,
    params,
    make: ({ count, of: given }, tools) => (given ? changed(given, of) : drawn(of, count, tools)),
  });

function drawn(of: Family, count: number, { random }: SchemeTools): SchemeColor[] {
  const hues = random.fork("hue");
  const lead = hues.between(...hues.pick(of.lead));
  const side = hues.next() < 0.5 ? -1 : 1;
  const colors: SchemeColor[] = [];
  for (const [i, ink] of of.inks.slice(0, count).entries()) {
    const own = random.fork(`ink ${i + 1}`);
    let [best, farthest]: [SchemeColor | undefined, number] = [undefined, -1];
    for (let n = 0; n < TRIES; n++) {
      const hue = wrapTurns(ink.hue ? own.between(...ink.hue) : lead + side * own.between(...ink.beside!));
      const plain = own.between(...ink.lightness);
      const chroma = own.between(...ink.chroma);
      const lightness = natural(of.natural, plain, chroma, hue);
      const color = { lightness, chroma, hue };
      const near = colors.reduce((least, other) => Math.min(least, apartSquared(color, other)), 9);
      const apart = of.shun?.some(([from, to]) => hue > from && hue < to) ? near / 100 : near;
      if (apart > farthest) [best, farthest] = [color, apart];
    }
    colors.push(best!);
  }
  return colors;
}
