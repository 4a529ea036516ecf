import { wcagContrast } from "culori/fn";
import { readInk } from "./ink.ts";

/**
 * Contrast of two inks, 1 (none) to 21 (black on white): (L1 + 0.05) / (L2 + 0.05) of their relative
 * luminances, after WCAG 2.2. Any opaque CSS colours, taken as the 8-bit inks they become.
 * Rounded to 1e-6, so that every engine decides alike.
 * @throws SprigwrightError `bad-color`
 */
export function contrast(inkA: string, inkB: string): number {
  const [a, b] = [readInk(inkA, "contrast"), readInk(inkB, "contrast")];
  return Math.round(wcagContrast(a, b) * 1e6) / 1e6;
}
