import {
  formatHex,
  inGamut,
  modeA98,
  modeHsl,
  modeHwb,
  modeLab,
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

/** The colour spaces of CSS Color 4; culori keeps them in a list of its own, filled at first use. */
const SPACES = [
  modeRgb,
  modeLrgb,
  modeHsl,
  modeHwb,
  modeLab,
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
  prepareColors();
  const parsed =
    typeof color === "string" && color.length <= 200 && !BARE_HEX.test(color) ? parse(color) : undefined;
  if (!parsed) throw badColor(where, color);
  if (parsed.alpha !== undefined && parsed.alpha < 1) throw badColor(where, color, "is not opaque");
  const mapped = inGamut("rgb")(parsed) ? parsed : toGamut("rgb", "oklch")(parsed);
  return formatHex(mapped);
}

/** Red, green and blue, 0..255, of an ink `#rrggbb`. */
export function inkBytes(ink: string): readonly [red: number, green: number, blue: number] {
  const value = Number.parseInt(ink.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
}
