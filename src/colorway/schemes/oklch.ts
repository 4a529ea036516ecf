import { converter } from "culori/fn";
import { cosTurns, sinTurns, wrapTurns } from "../../seed/trigonometry.ts";
import { parseColor } from "../ink.ts";
import type { SchemeColor } from "./scheme.ts";

const rounded = (value: number): number => Math.round(value * 1e6) / 1e6;

/** An ink `#rrggbb` in OKLCH, rounded to 1e-6; a grey has hue 0. */
export function oklchOf(ink: string): SchemeColor {
  const { l, c, h } = converter("oklch")(parseColor(ink, "ink"));
  return { lightness: rounded(l), chroma: rounded(c), hue: wrapTurns(rounded((h ?? 0) / 360)) };
}

/** Squared distance of two colours in OKLab. */
export function apartSquared(p: SchemeColor, q: SchemeColor): number {
  const l = p.lightness - q.lightness;
  const a = p.chroma * cosTurns(p.hue) - q.chroma * cosTurns(q.hue);
  const b = p.chroma * sinTurns(p.hue) - q.chroma * sinTurns(q.hue);
  return l * l + a * a + b * b;
}
