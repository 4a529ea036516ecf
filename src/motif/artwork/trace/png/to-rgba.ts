import type { DecodedPng } from "fast-png";
import type { Header } from "./header.ts";
import { badPicture } from "./refused.ts";

/** Samples of any PNG as red, green, blue and alpha of 8 bits. @throws SprigwrightError `bad-picture` */
export function toRgba(decoded: DecodedPng, header: Header, where: string): Uint8Array {
  const { width, height, depth, channels, palette } = header;
  const samples = depth < 8 ? spread(decoded.data, width, height, depth) : decoded.data;
  const out = new Uint8Array(width * height * 4);
  if (palette) {
    const inks = decoded.palette;
    if (!inks) throw badPicture(where, "its palette is missing");
    for (let i = 0; i < width * height; i++) {
      const ink = inks[samples[i]!];
      if (!ink) throw badPicture(where, "it names a colour that its palette does not have");
      out.set(ink, 4 * i);
      if (ink.length < 4) out[4 * i + 3] = 255;
    }
    return out;
  }
  const key = decoded.transparency;
  const most = depth === 16 ? 65_535 : (1 << depth) - 1;
  const eight = (value: number): number => (depth === 8 ? value : Math.round((value * 255) / most));
  const colors = channels < 3 ? 1 : 3;
  for (let i = 0; i < width * height; i++) {
    const at = i * channels;
    for (let c = 0; c < 3; c++) out[4 * i + c] = eight(samples[colors === 1 ? at : at + c]!);
    out[4 * i + 3] = channels === colors ? 255 : eight(samples[at + colors]!);
    if (key && key.length >= colors && samples[at] === key[0] && (colors === 1 || isKey(samples, at, key)))
      out[4 * i + 3] = 0;
  }
  return out;
}

const isKey = (samples: ArrayLike<number>, at: number, key: Uint16Array): boolean =>
  samples[at + 1] === key[1] && samples[at + 2] === key[2];

/** Samples of 1, 2 or 4 bits, one a byte; every row starts at a byte. */
function spread(data: ArrayLike<number>, width: number, height: number, depth: number): Uint8Array {
  const out = new Uint8Array(width * height);
  const row = Math.ceil((width * depth) / 8);
  const mask = (1 << depth) - 1;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const bit = x * depth;
      out[y * width + x] = (data[y * row + (bit >> 3)]! >> (8 - depth - (bit & 7))) & mask;
    }
  return out;
}
