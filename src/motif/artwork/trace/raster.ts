import type { Picture } from "./picture.ts";

/** Pixels as they mix: red, green and blue times alpha, and alpha, 0 to 255. Where two inks share a pixel, all four lie on the line between them. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
  /** The same, a pixel a word: to see at once whether two are equal. */
  readonly words: Uint32Array;
}

/** A raster of data that begins an array buffer. */
export const raster = (width: number, height: number, data: Uint8Array): Raster => ({
  ...{ width, height, data },
  words: new Uint32Array(data.buffer, data.byteOffset, width * height),
});

/** Pixels that are worked on; larger pictures are averaged down by a whole factor. */
const PLENTY = 16_000_000;

/** The picture ready to be traced, and by which factor it was averaged down. */
export function rasterOf(picture: Picture): { readonly raster: Raster; readonly factor: number } {
  const { width, height, data } = picture;
  let factor = 1;
  while (Math.ceil(width / factor) * Math.ceil(height / factor) > PLENTY) factor++;
  const whole = raster(width, height, multiplied(data));
  return { factor, raster: factor === 1 ? whole : averaged(whole, factor) };
}

function multiplied(data: Uint8Array | Uint8ClampedArray): Uint8Array {
  const out = new Uint8Array(data);
  for (let i = 3; i < out.length; i += 4) {
    const alpha = out[i]!;
    if (alpha === 255) continue;
    for (let c = i - 3; c < i; c++) out[c] = Math.round((out[c]! * alpha) / 255);
  }
  return out;
}

function averaged(whole: Raster, factor: number): Raster {
  const [width, height] = [Math.ceil(whole.width / factor), Math.ceil(whole.height / factor)];
  const data = new Uint8Array(width * height * 4);
  const sums = new Uint32Array(width * 4);
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    const last = Math.min(whole.height, (y + 1) * factor);
    for (let row = y * factor; row < last; row++)
      for (let x = 0, at = row * whole.width * 4; x < whole.width; x++, at += 4) {
        const to = Math.floor(x / factor) * 4;
        for (let c = 0; c < 4; c++) sums[to + c] = sums[to + c]! + whole.data[at + c]!;
      }
    for (let x = 0; x < width; x++) {
      const count = (last - y * factor) * (Math.min(whole.width, (x + 1) * factor) - x * factor);
      for (let c = 0; c < 4; c++) data[(y * width + x) * 4 + c] = Math.round(sums[x * 4 + c]! / count);
    }
  }
  return raster(width, height, data);
}

/** The largest difference of a channel between two pixels. */
export function channelGap(data: Uint8Array, i: number, j: number): number {
  const [p, q] = [4 * i, 4 * j];
  const red = Math.abs(data[p]! - data[q]!);
  const green = Math.abs(data[p + 1]! - data[q + 1]!);
  const blue = Math.abs(data[p + 2]! - data[q + 2]!);
  const alpha = Math.abs(data[p + 3]! - data[q + 3]!);
  const one = Math.max(red, green);
  const two = Math.max(blue, alpha);
  return Math.max(one, two);
}
