import { wcagContrast } from "culori/fn";
import { prepareColors } from "./ink.ts";

/**
 * Contrast of two inks, 1 (none) to 21 (black on white): (L1 + 0.05) / (L2 + 0.05) of their relative
 * luminances, after WCAG 2.2. Rounded to 1e-6, so that every engine decides alike.
 */
export function contrast(inkA: string, inkB: string): number {
  prepareColors();
  return Math.round(wcagContrast(inkA, inkB) * 1e6) / 1e6;
}
