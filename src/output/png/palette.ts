import type { Levels } from "./levels.ts";

/**
 * The colours of all entries, red, green, blue …, 8-bit sRGB, from the ink (`#rrggbb`) of each role.
 * Steps between two inks are mixed in plain sRGB, as browsers and SVG viewers do at a shape's edge.
 */
export function paletteBytes(levels: Levels, inks: readonly string[]): Uint8Array {
  const parts = inks.map(channelsOf);
  const { low, high, step, of } = levels;
  const bytes = new Uint8Array(low.length * 3);
  for (let entry = 0; entry < low.length; entry++) {
    const [from, to] = [parts[low[entry]!]!, parts[high[entry]!]!];
    const [share, whole] = [step[entry]!, of[entry]!];
    for (let c = 0; c < 3; c++)
      bytes[entry * 3 + c] = Math.round((from[c]! * (whole - share) + to[c]! * share) / whole);
  }
  return bytes;
}

/** Red, green and blue of `#rrggbb`. */
export const channelsOf = (ink: string): number[] =>
  [1, 3, 5].map((at) => Number.parseInt(ink.slice(at, at + 2), 16));
