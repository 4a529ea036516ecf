import {
  type Color,
  colorsNamed,
  converter,
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

/** A colour of a drawing: `#rrggbb` in 8-bit sRGB, and how much it covers, 0 to 1. */
export interface FlatColor {
  readonly fill: string;
  readonly alpha: number;
}

const byte = (value: number): number => Math.min(255, Math.max(0, Math.round(value)));

/** Three channels, rounded to 8 bits, as `#rrggbb`. */
export const hexOf = (red: number, green: number, blue: number): string =>
  `#${((1 << 24) | (byte(red) << 16) | (byte(green) << 8) | byte(blue)).toString(16).slice(1)}`;

/** Red, green and blue, 0 to 255, of `#rrggbb`. */
export function bytesOf(fill: string): readonly [red: number, green: number, blue: number] {
  const value = Number.parseInt(fill.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
}

/**
 * A colour as files write it, after CSS Color 4: hexadecimal, a name, or a function, `rgb()` to `color(display-p3 …)`.
 * One outside sRGB is brought in by lowering its OKLCH chroma, as CSS has it; legacy `rgb()` is held to 0 to 255.
 * Undefined for anything else.
 */
export function readColor(text: string): FlatColor | undefined {
  const word = text.trim().toLowerCase();
  if (word === "transparent") return { fill: "#000000", alpha: 0 };
  if (Object.hasOwn(colorsNamed, word))
    return {
      fill: `#${((1 << 24) | colorsNamed[word as keyof typeof colorsNamed]).toString(16).slice(1)}`,
      alpha: 1,
    };
  if (/^#(?:[0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8})$/.test(word)) return readHex(word.slice(1));
  return word.length <= 100 && /^[a-z]+\(/.test(word) ? readFunction(word) : undefined;
}

function readHex(digits: string): FlatColor {
  const long = digits.length > 4 ? digits : digits.replace(/./g, "$&$&");
  const alpha = long.length === 8 ? Number.parseInt(long.slice(6), 16) / 255 : 1;
  return { fill: `#${long.slice(0, 6)}`, alpha };
}

/** The colour spaces of CSS Color 4, and CIELAB of D65 for differences. */
const SPACES = [
  ...[modeRgb, modeHsl, modeHwb, modeLab, modeLab65, modeLch, modeOklab, modeOklch, modeLrgb],
  ...[modeP3, modeA98, modeProphoto, modeRec2020, modeXyz50, modeXyz65],
];
let ready = false;

/** Makes culori know its colour spaces: it keeps them in a list, filled at first use. Cheap after the first call. */
export function prepareColors(): void {
  if (!ready) for (const space of SPACES) useMode(space as Parameters<typeof useMode>[0]);
  ready = true;
}

/** A colour as `#rrggbb`; one outside sRGB is brought in by lowering its OKLCH chroma (CSS Color 4, 13.2). */
export function mappedFill(color: Color): string {
  prepareColors();
  return clippedFill(inGamut("rgb")(color) ? color : toGamut("rgb", "oklch")(color));
}

function clippedFill(color: Color): string {
  const { r = 0, g = 0, b = 0 } = converter("rgb")(color);
  // Engines differ in the last bits: channels are taken to 1e-6 before they are rounded.
  const [red, green, blue] = [r, g, b].map((v) => Math.round(v * 255e6) / 1e6);
  return hexOf(red!, green!, blue!);
}

function readFunction(word: string): FlatColor | undefined {
  prepareColors();
  const color = parse(word);
  if (!color) return undefined;
  const alpha = Math.min(1, Math.max(0, Math.round((color.alpha ?? 1) * 1e6) / 1e6));
  return { fill: color.mode === "rgb" ? clippedFill(color) : mappedFill(color), alpha };
}

/** Whether a paint means something: what does not is passed over, as CSS has it. */
export const isPaint = (text: string): boolean =>
  /^(?:none|currentcolor|context-fill|context-stroke|url\(.*)$/is.test(text) || readColor(text) !== undefined;
