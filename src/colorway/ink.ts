import { type Color, converter, parse } from "culori/fn";
import { badColor } from "../errors/catalogue.ts";
import { bytesOf, mappedFill, prepareColors } from "../motif/artwork/color.ts";

/** Hex digits without their "#": culori takes them, CSS does not, and "facade" would pass for a colour. */
const BARE_HEX = /^\s*[0-9a-f]+\s*$/i;

/** No number of a colour is larger than this, hues and percentages included; beyond, conversions run over. */
const LARGEST = 1e6;

/**
 * Any opaque CSS colour (CSS Color 4) as `#rrggbb`, 8-bit sRGB.
 * A colour outside sRGB is brought in by lowering its OKLCH chroma, after the gamut mapping of CSS Color 4.
 * @throws SprigwrightError `bad-color`
 */
export function readInk(color: unknown, where: string): string {
  return toInk(parseColor(color, where));
}

/** Whether a text is a CSS colour, opaque or not. */
export function isColor(text: string): boolean {
  prepareColors();
  return text.length <= 200 && !BARE_HEX.test(text) && parse(text) !== undefined;
}

/** Whether a text is a CSS colour that lets through what lies below it. */
export const isTranslucent = (text: string): boolean => isColor(text) && (parse(text)?.alpha ?? 1) < 1;

/** Any opaque CSS colour, as culori has it. @throws SprigwrightError `bad-color` */
export function parseColor(color: unknown, where: string): Color {
  prepareColors();
  const parsed = typeof color === "string" && isColor(color) ? parse(color) : undefined;
  if (!parsed) throw badColor(where, color);
  if (parsed.alpha !== undefined && parsed.alpha < 1) throw badColor(where, color, "is not opaque");
  for (const part of Object.values(parsed))
    if (typeof part === "number" && !(Math.abs(part) <= LARGEST))
      throw badColor(where, color, "is beyond all colours");
  return parsed;
}

/** A colour as an ink; one outside sRGB after the gamut mapping of CSS Color 4, 13.2. */
export const toInk = (color: Color): string => mappedFill(color);

/** Whether an 8-bit ink can be a colour as it is: its channels, taken to 1e-6, round to 0..255 by themselves. */
export function inSrgb(color: Color): boolean {
  prepareColors();
  const { r, g, b } = converter("rgb")(color);
  return [r, g, b].every((channel: number | undefined) => {
    const level = Math.round(255 * (channel ?? 0) * 1e6) / 1e6;
    return level >= -0.5 && level < 255.5;
  });
}

/** Red, green and blue, 0..255, of an ink `#rrggbb`. */
export const inkBytes = (ink: string): readonly [red: number, green: number, blue: number] => bytesOf(ink);
