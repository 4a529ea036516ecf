import { badInput } from "../../errors/catalogue.ts";
import { integer } from "../../params/kinds.ts";
import type { Param } from "../../params/param.ts";
import { wrapTurns } from "../../seed/trigonometry.ts";
import { ink } from "../param.ts";
import { defineScheme, type SchemeFactory } from "./define.ts";
import { oklchOf } from "./oklch.ts";
import type { SchemeColor } from "./scheme.ts";

/** Parameters of a harmony. */
export type HarmonySpec = {
  /** The colour that all others are worked out from, any CSS colour that is no grey. */
  readonly of: Param<string, string, false>;
  /** Number of inks, 2 to 10; default 6. */
  readonly count: Param<number, number, true>;
};

const params: HarmonySpec = {
  of: ink({ about: "The colour that all others are worked out from." }),
  count: integer({
    about: "Number of inks: a ground, the hues, a dark, then lighter and darker shades of the hues.",
    min: 2,
    max: 10,
    default: 6,
  }),
};

/** Chroma below which a colour is a grey: what was worked out from it would be one colour many times. */
const FAINTEST = 0.02;

/** Lightness and chroma of what supports the hues: a pale ground of the base hue, and a dark of it. */
const GROUND = { lightness: 0.955, chroma: 0.018 };
const DARK = { lightness: 0.3, chroma: 0.05 };
/** Shades of each hue, in turn: how far to the ground's or the dark's lightness, and what is left of the chroma. */
const SHADES = [
  { to: GROUND.lightness, way: 0.6, chroma: 0.5 },
  { to: DARK.lightness, way: 0.5, chroma: 0.8 },
] as const;

/** A scheme piece of hues at fixed distances from one, in turns. */
function harmony(name: string, about: string, hues: readonly number[]): SchemeFactory<HarmonySpec> {
  return defineScheme({
    name: `sprigwright/${name}`,
    about,
    params,
    make({ of, count }) {
      const base = oklchOf(of);
      if (base.chroma < FAINTEST)
        throw badInput(
          "no-hue",
          "of",
          `${of} is a grey, and has no hue to go round the wheel from`,
          "give a stronger colour",
        );
      const full = hues.map((away) => ({ ...base, hue: wrapTurns(base.hue + away) }));
      const shades = SHADES.flatMap(({ to, way, chroma }) =>
        full.map(({ lightness, chroma: own, hue }) => ({
          lightness: lightness + (to - lightness) * way,
          chroma: own * chroma,
          hue,
        })),
      );
      const neutral = ({ lightness, chroma }: typeof GROUND): SchemeColor => ({
        lightness,
        chroma: Math.min(chroma, base.chroma),
        hue: base.hue,
      });
      return [neutral(GROUND), ...full, neutral(DARK), ...shades].slice(0, count);
    },
  });
}

/** A colour and the one across the wheel: the strongest contrast of hue. */
export const complementary: SchemeFactory<HarmonySpec> = harmony(
  "complementary",
  "A colour and the one across the wheel: the strongest contrast of hue.",
  [0, 1 / 2],
);

/** A colour and its neighbours on the wheel: calm, all of one family. */
export const analogous: SchemeFactory<HarmonySpec> = harmony(
  "analogous",
  "A colour and its neighbours on the wheel: calm, all of one family.",
  [0, 1 / 12, -1 / 12],
);

/** Three colours a third of the wheel apart: lively and even. */
export const triad: SchemeFactory<HarmonySpec> = harmony(
  "triad",
  "Three colours a third of the wheel apart: lively and even.",
  [0, 1 / 3, 2 / 3],
);

/** A colour and the two beside its complement: contrast with less of a quarrel. */
export const split: SchemeFactory<HarmonySpec> = harmony(
  "split",
  "A colour and the two beside its complement: contrast with less of a quarrel.",
  [0, 5 / 12, 7 / 12],
);

/** Four colours a quarter of the wheel apart: the most colourful; let one lead. */
export const tetrad: SchemeFactory<HarmonySpec> = harmony(
  "tetrad",
  "Four colours a quarter of the wheel apart: the most colourful; let one lead.",
  [0, 1 / 4, 1 / 2, 3 / 4],
);
