import { deltaOf } from "./delta-e.ts";
import { inSrgb, parseColor, toInk } from "./ink.ts";

/** What {@link gamutOf} says of a colour. */
export interface Gamut {
  /** Whether it is within sRGB, which inks are written in. */
  readonly inside: boolean;
  /** The ink that it is, or, by lowering OKLCH chroma after CSS Color 4, 13.2, becomes. */
  readonly ink: string;
  /** ΔE00 from the colour to that ink; under 0.5 within sRGB, where only 8-bit steps count. */
  readonly deltaE: number;
}

/**
 * Whether an ink can be a colour as it is, and what it becomes otherwise. Whether the ink can then be printed is asked of
 * a printer's profile: `sprigwright/proof`.
 * @example gamutOf("oklch(0.7 0.4 150)") // { inside: false, ink: "#00c248", deltaE: … }
 * @throws SprigwrightError `bad-color`
 */
export function gamutOf(color: string): Gamut {
  const parsed = parseColor(color, "gamutOf");
  const ink = toInk(parsed);
  return { inside: inSrgb(parsed), ink, deltaE: deltaOf(parsed, parseColor(ink, "gamutOf")) };
}
