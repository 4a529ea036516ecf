import { MIX_COUNT } from "./mix.ts";
import { channelsOf } from "./palette.ts";

/** Mix → red, green and blue in 24 bits, for the ink (`#rrggbb`) of each role; mixed in plain sRGB, as the palette is. */
export function colorsOf(inks: readonly string[]): (mix: number) => number {
  const parts = inks.map(channelsOf);
  const known = new Int32Array(MIX_COUNT).fill(-1);
  return (mix) => {
    const before = known[mix]!;
    if (before >= 0) return before;
    const [low, high, share] = [parts[mix >> 14]!, parts[(mix >> 8) & 63]!, mix & 255];
    let color = 0;
    for (let c = 0; c < 3; c++)
      color = (color << 8) | Math.round((low[c]! * (255 - share) + high[c]! * share) / 255);
    known[mix] = color;
    return color;
  };
}
