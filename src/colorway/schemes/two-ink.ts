import { converter } from "culori/fn";
import { optional } from "../../params/compound.ts";
import { integer } from "../../params/kinds.ts";
import type { Param } from "../../params/param.ts";
import type { Random } from "../../seed/random.ts";
import { wrapTurns } from "../../seed/trigonometry.ts";
import { parseColor, toInk } from "../ink.ts";
import { ink } from "../param.ts";
import { defineScheme, type SchemeFactory } from "./define.ts";
import { natural } from "./natural.ts";
import { oklchOf } from "./oklch.ts";
import type { Span } from "./ranges.ts";
import type { SchemeColor } from "./scheme.ts";

/** Parameters of {@link twoInk}. */
export type TwoInkSpec = {
  /** The darker ink; without it one is made. */
  readonly first: Param<string, string | undefined, true>;
  /** The lighter ink; without it one is made. */
  readonly second: Param<string, string | undefined, true>;
  /** The stock; without it a warm white is made. */
  readonly paper: Param<string, string | undefined, true>;
  /** 3: paper and inks; 4: the overprint too; 6 (default): a tint of each as well. */
  readonly count: Param<number, number, true>;
};

/** How much of the paper a tint covers. */
const TINT = 0.55;
/** Ranges in OKLCH; the second ink's hue lies across from the first's, and both are drawn to where hues are strong. */
const PAPER = { lightness: [0.965, 0.985], chroma: [0.008, 0.018], hue: [0.18, 0.28] } as const;
const FIRST = { lightness: [0.42, 0.5], chroma: [0.11, 0.17], hue: [0.45, 1.08] } as const;
const SECOND = { lightness: [0.66, 0.72], chroma: [0.16, 0.22], beside: [0.33, 0.6] } as const;
const NATURAL = 0.5;

/** Two inks on paper, with what a printer makes of them for nothing: a tint of each, and one printed over the other. */
export const twoInk: SchemeFactory<TwoInkSpec> = defineScheme({
  name: "sprigwright/two-ink",
  about:
    "Two inks on paper, with what a printer makes of them for nothing: a tint of each, and one printed over the other.",
  params: {
    first: optional(ink({ about: "The darker ink; without it one is made." })),
    second: optional(ink({ about: "The lighter ink; without it one is made." })),
    paper: optional(ink({ about: "The stock; without it a warm white is made." })),
    count: integer({
      about: "3: paper and inks; 4: the overprint too; 6: a tint of each as well.",
      min: 3,
      max: 6,
      default: 6,
    }),
  },
  make({ first, second, paper, count }, { random }) {
    const dark = first === undefined ? drawn(random.fork("first"), FIRST) : oklchOf(first);
    const own = random.fork("second");
    const across = wrapTurns(dark.hue + own.between(...SECOND.beside));
    const lightness = own.between(...SECOND.lightness);
    const chroma = own.between(...SECOND.chroma);
    const strong = { lightness: natural(NATURAL, lightness, chroma, across), chroma, hue: across };
    const light = second === undefined ? strong : oklchOf(second);
    const stock = paper === undefined ? drawn(random.fork("paper"), PAPER) : oklchOf(paper);
    const tint = (of: SchemeColor): SchemeColor => mixed([stock, of], (s, c) => s + (c - s) * TINT);
    const over = mixed([stock, dark, light], (s, a, b) => (s === 0 ? 0 : (a * b!) / s));
    return [stock, dark, light, over, tint(dark), tint(light)].slice(0, count);
  },
});

/** Ranges of one colour. */
interface Ranges {
  readonly lightness: Span;
  readonly chroma: Span;
  readonly hue: Span;
}

const drawn = (random: Random, { lightness, chroma, hue }: Ranges): SchemeColor => ({
  lightness: random.between(...lightness),
  chroma: random.between(...chroma),
  hue: wrapTurns(random.between(...hue)),
});

/** Colours put together channel by channel in light (linear sRGB), as dots and layers of ink mix by eye. */
function mixed(
  colors: readonly SchemeColor[],
  rule: (stock: number, first: number, second?: number) => number,
): SchemeColor {
  const lights = colors.map(({ lightness: l, chroma: c, hue }) => {
    const printed = toInk({ mode: "oklch", l, c, h: hue * 360 });
    return converter("lrgb")(parseColor(printed, "ink"));
  });
  const channel = (key: "r" | "g" | "b"): number => {
    const [stock, first, second] = lights.map((light) => light[key]);
    return Math.min(1, Math.max(0, rule(stock!, first!, second)));
  };
  return oklchOf(toInk({ mode: "lrgb", r: channel("r"), g: channel("g"), b: channel("b") }));
}
