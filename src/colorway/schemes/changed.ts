import { wrapTurns } from "../../seed/trigonometry.ts";
import type { Palette } from "../palette.ts";
import { natural } from "./natural.ts";
import { oklchOf } from "./oklch.ts";
import type { Family, Span } from "./ranges.ts";
import type { SchemeColor } from "./scheme.ts";

/** Chroma below which an ink is a neutral and stays one. */
const NEUTRAL = 0.04;

/**
 * A palette brought into a family. Lightness spreads over the family's range in the palette's own order, turned about
 * where the first ink, its ground, is light and the family's dark, or the other way; chroma spreads over the family's, and
 * neutrals stay neutral; hues go to the nearest place that the family has for them, and are drawn to their natural
 * lightness as the family's are. A neutral ground takes the family's.
 */
export function changed({ inks }: Palette, family: Family): SchemeColor[] {
  const colors = Object.entries(inks).map(([name, ink]) => ({ ...oklchOf(ink), name }));
  const byLight = [...colors].sort((p, q) => p.lightness - q.lightness);
  const [low, high] = [byLight[0]!, byLight.at(-1)!];
  const strongest = colors.reduce((best, color) => (color.chroma > best.chroma ? color : best));
  const [darkest, lightest] = rangeOf(family.inks.flatMap((ink) => ink.lightness));
  const [least, most] = rangeOf(family.inks.slice(1).flatMap((ink) => ink.chroma));
  const hueFor = (hue: number): number =>
    family.hues === "one" ? strongest.hue : family.hues ? nearestHue(hue, family.hues) : hue;
  const up = (lightness: number): number =>
    high.lightness > low.lightness ? (lightness - low.lightness) / (high.lightness - low.lightness) : 0.5;
  const [ground] = family.inks as readonly [Family["inks"][number]];
  const isLight = (lightness: number): boolean => 2 * lightness > darkest + lightest;
  const reversed = up(colors[0]!.lightness) > 0.5 !== isLight(middle(ground.lightness));
  return colors.map(({ name, lightness, chroma, hue }, i) => {
    const share = reversed ? 1 - up(lightness) : up(lightness);
    const placed = { name, lightness: darkest + (lightest - darkest) * share };
    if (chroma >= NEUTRAL) {
      const strong = least + (most - least) * (chroma / strongest.chroma);
      const to = hueFor(hue);
      return {
        name,
        lightness: natural(family.natural, placed.lightness, strong, to),
        chroma: strong,
        hue: to,
      };
    }
    if (i > 0) return { ...placed, chroma: Math.min(chroma, least), hue: hueFor(hue) };
    const own =
      family.hues === "one" ? strongest.hue : nearestHue(low.hue, ground.hue ? [ground.hue] : family.lead);
    return { ...placed, chroma: middle(ground.chroma), hue: own };
  });
}

const middle = ([least, most]: Span): number => (least + most) / 2;

const rangeOf = (values: readonly number[]): Span => [Math.min(...values), Math.max(...values)];

/** A hue within some arcs: itself, or the nearest end of one. */
function nearestHue(hue: number, arcs: readonly Span[]): number {
  let [best, least] = [hue, Number.POSITIVE_INFINITY];
  for (const [from, to] of arcs) {
    if (wrapTurns(hue - from) <= to - from) return hue;
    for (const end of [from, to]) {
      const off = wrapTurns(hue - end);
      const away = Math.min(off, 1 - off);
      if (away < least) [best, least] = [wrapTurns(end), away];
    }
  }
  return best;
}
