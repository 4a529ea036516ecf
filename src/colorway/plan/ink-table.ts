import { converter, wcagLuminance } from "culori/fn";
import { deltaOf } from "../delta-e.ts";
import { parseColor } from "../ink.ts";
import { reading } from "./reading.ts";

/** The inks of all palettes, each colour once, with what is asked about them again and again. */
export interface InkTable {
  /** `#rrggbb`, each once. */
  readonly inks: readonly string[];
  /** CIELAB lightness L* (D65), 0..100. */
  readonly lightness: Float64Array;
  /** OKLCH chroma, 0 for a grey up to about 0.32. */
  readonly chroma: Float64Array;
  /** Relative luminance after WCAG 2.2, 0..1. */
  readonly luminance: Float64Array;
  /** ΔE00 of inks a and b at `a * inks.length + b`. */
  readonly difference: Float64Array;
  /** How well a and b are told apart, 0..1, at the same place: see {@link reading}. */
  readonly reads: Float64Array;
}

const rounded = (value: number): number => Math.round(value * 1e6) / 1e6;

/** Measures inks (`#rrggbb`). All that comes from culori is rounded to 1e-6, so that every engine decides alike. */
export function inkTable(inks: readonly string[]): InkTable {
  const count = inks.length;
  const colors = inks.map((ink) => parseColor(ink, "ink"));
  const labs = colors.map((color) => converter("lab65")(color));
  const lightness = Float64Array.from(labs, ({ l }) => rounded(l));
  const difference = new Float64Array(count * count);
  const reads = new Float64Array(count * count);
  for (let a = 0; a < count; a++)
    for (let b = 0; b < a; b++) {
      const [at, mirrored] = [a * count + b, b * count + a];
      difference[at] = difference[mirrored] = deltaOf(labs[a]!, labs[b]!);
      reads[at] = reads[mirrored] = reading(difference[at]!, Math.abs(lightness[a]! - lightness[b]!));
    }
  return {
    inks,
    lightness,
    chroma: Float64Array.from(colors, (color) => rounded(converter("oklch")(color).c)),
    luminance: Float64Array.from(colors, (color) => rounded(wcagLuminance(color))),
    difference,
    reads,
  };
}
