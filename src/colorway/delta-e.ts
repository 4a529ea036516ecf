import { type Color, differenceCiede2000 } from "culori/fn";
import { prepareColors } from "../motif/artwork/color.ts";
import { parseColor, toInk } from "./ink.ts";

/**
 * How different two inks look: CIEDE2000 (ISO/CIE 11664-6), 0 for the same. About 1 is the least that is seen side by
 * side, 10 two shades that nobody mixes up, 100 black and white (common practice). Any opaque CSS colours, taken as the
 * 8-bit inks they become. Rounded to 1e-6, so that every engine decides alike.
 * @throws SprigwrightError `bad-color`
 */
export function deltaE(inkA: string, inkB: string): number {
  const [a, b] = [inkA, inkB].map((ink) => toInk(parseColor(ink, "deltaE")));
  return deltaOf(parseColor(a, "deltaE"), parseColor(b, "deltaE"));
}

/** ΔE00 of two colours of any culori mode, rounded to 1e-6. CIELAB values are taken in mode `lab65`, as they are. */
export function deltaOf(a: Color, b: Color): number {
  prepareColors();
  return Math.round(differenceCiede2000()(a, b) * 1e6) / 1e6;
}
