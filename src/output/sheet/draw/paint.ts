import { inkBytes } from "../../../colorway/ink.ts";
import { type Band, FULL } from "../../png/band.ts";

/** A band of rows in full colour, one number a pixel: red, green and blue, 8 bits each. */
export type Colours = Int32Array;

/**
 * Paints what was added to `band.sums` in one ink over a band's colours, and clears the sums. Colours at an edge are
 * mixed in plain sRGB, as browsers and SVG viewers do.
 */
export function paintInk(band: Band, colours: Colours, ink: string): void {
  const { width, words, sums, touched } = band;
  const bytes = inkBytes(ink);
  const solid = (bytes[0] << 16) | (bytes[1] << 8) | bytes[2];
  for (let row = 0; row < band.rows; row++) {
    const cells = row * width;
    let [sum, cover, start] = [0, 0, 0];
    for (let w = row * words; w < (row + 1) * words; w++) {
      let bits = touched[w]!;
      if (bits === 0) continue;
      touched[w] = 0;
      const base = cells + (w - row * words) * 32;
      while (bits !== 0) {
        const bit = bits & -bits;
        bits ^= bit;
        const at = base + 31 - Math.clz32(bit);
        if (cover > 0) mix(colours, start, at, solid, cover);
        sum += sums[at]!;
        sums[at] = 0;
        cover = (Math.min(FULL, Math.abs(sum)) * 255 + FULL / 2) >> 17;
        start = at;
      }
    }
    if (cover > 0) mix(colours, start, cells + width, solid, cover);
  }
}

/** `ink` over the pixels from..to, with `cover` of 255. */
function mix(colours: Colours, from: number, to: number, ink: number, cover: number): void {
  if (cover === 255) {
    colours.fill(ink, from, to);
    return;
  }
  const rest = 255 - cover;
  for (let i = from; i < to; i++) {
    const under = colours[i]!;
    const red = (((under >> 16) * rest + (ink >> 16) * cover + 127) / 255) | 0;
    const green = ((((under >> 8) & 255) * rest + ((ink >> 8) & 255) * cover + 127) / 255) | 0;
    const blue = (((under & 255) * rest + (ink & 255) * cover + 127) / 255) | 0;
    colours[i] = (red << 16) | (green << 8) | blue;
  }
}
