import {
  type Color,
  converter,
  formatHex,
  inGamut,
  modeA98,
  modeHsl,
  modeHwb,
  modeLab,
  modeLab65,
  modeLch,
  modeLrgb,
  modeOklab,
  modeOklch,
  modeP3,
  modeProphoto,
  modeRec2020,
  modeRgb,
  modeXyz50,
  modeXyz65,
  parse,
  toGamut,
  useMode,
} from "culori/fn";
import { badColor } from "../errors/catalogue.ts";

/** The colour spaces of CSS Color 4, and CIELAB of D65 for differences; culori keeps them in a list, filled at first use. */
const SPACES = [
  modeRgb,
  modeLrgb,
  modeHsl,
  modeHwb,
  modeLab,
  modeLab65,
  modeLch,
  modeOklab,
  modeOklch,
  modeP3,
  modeA98,
  modeProphoto,
  modeRec2020,
  modeXyz50,
  modeXyz65,
];
/** Hex digits without their "#": culori takes them, CSS does not, and "facade" would pass for a colour. */
const BARE_HEX = /^\s*[0-9a-f]+\s*$/i;

let ready = false;

/** Makes culori know its colour spaces. Cheap after the first call. */
export function prepareColors(): void {
  if (ready) return;
  for (const space of SPACES) useMode(space as Parameters<typeof useMode>[0]);
  ready = true;
}

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

/** Any opaque CSS colour, as culori has it. @throws SprigwrightError `bad-color` */
export function parseColor(color: unknown, where: string): Color {
  prepareColors();
  const parsed = typeof color === "string" && isColor(color) ? parse(color) : undefined;
  if (!parsed) throw badColor(where, color);
  if (parsed.alpha !== undefined && parsed.alpha < 1) throw badColor(where, color, "is not opaque");
  return parsed;
}

/** A colour as an ink; one outside sRGB after the gamut mapping of CSS Color 4, 13.2. */
export function toInk(color: Color): string {
  prepareColors();
  return formatHex(inGamut("rgb")(color) ? color : toGamut("rgb", "oklch")(color));
}

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
export function inkBytes(ink: string): readonly [red: number, green: number, blue: number] {
  const value = Number.parseInt(ink.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
}
