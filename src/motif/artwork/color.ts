import { colorsNamed, convertHslToRgb } from "culori/fn";

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

/** A colour as SVG files write it: hexadecimal, a name, `rgb()` or `hsl()`. Undefined for anything else. */
export function readColor(text: string): FlatColor | undefined {
  const word = text.trim().toLowerCase();
  if (word === "transparent") return { fill: "#000000", alpha: 0 };
  if (Object.hasOwn(colorsNamed, word))
    return {
      fill: `#${((1 << 24) | colorsNamed[word as keyof typeof colorsNamed]).toString(16).slice(1)}`,
      alpha: 1,
    };
  if (/^#(?:[0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8})$/.test(word)) return readHex(word.slice(1));
  const call = word.length <= 100 ? /^(rgb|hsl)a?\(([^()]*)\)$/.exec(word) : null;
  return call ? readCall(call[1]!, call[2]!.split(/[\s,/]+/).filter(Boolean)) : undefined;
}

function readHex(digits: string): FlatColor {
  const long = digits.length > 4 ? digits : digits.replace(/./g, "$&$&");
  const alpha = long.length === 8 ? Number.parseInt(long.slice(6), 16) / 255 : 1;
  return { fill: `#${long.slice(0, 6)}`, alpha };
}

function readCall(space: string, words: readonly string[]): FlatColor | undefined {
  if (words.length !== 3 && words.length !== 4) return undefined;
  const share = (word: string, whole: number): number =>
    word.endsWith("%") ? Number(word.slice(0, -1)) / 100 : Number(word) / whole;
  const [a, b, c, d = "1"] = words as [string, string, string, string?];
  const alpha = Math.min(1, Math.max(0, share(d, 1)));
  const rgb =
    space === "rgb"
      ? { r: share(a, 255), g: share(b, 255), b: share(c, 255) }
      : convertHslToRgb({ h: Number(a.replace("deg", "")), s: share(b, 100), l: share(c, 100) });
  const channels = [rgb.r * 255, rgb.g * 255, rgb.b * 255] as const;
  return [...channels, alpha].every(Number.isFinite) ? { fill: hexOf(...channels), alpha } : undefined;
}
