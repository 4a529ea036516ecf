// Pictures as plain numbers, read by libraries that the project did not write.
import { Resvg } from "@resvg/resvg-js";
import { PNG } from "pngjs";

/** Red, green, blue, alpha of every pixel. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** A PNG file as pixels, by pngjs. */
export const readPng = (bytes: Uint8Array): Picture => PNG.sync.read(Buffer.from(bytes));

/** A picture rolled round by whole pixels, to the right and down. */
export function rolled({ width, height, data }: Picture, dx: number, dy: number): Picture {
  const out = new Uint8Array(data.length);
  const from = new Uint32Array(data.buffer, data.byteOffset, width * height);
  const to = new Uint32Array(out.buffer);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      to[((y + dy) % height) * width + ((x + dx) % width)] = from[y * width + x]!;
  return { width, height, data: out };
}

/** How many pixels differ. */
export function differing(a: Picture, b: Picture): number {
  if (a.width !== b.width || a.height !== b.height) return Number.POSITIVE_INFINITY;
  let count = 0;
  for (let i = 0; i < a.data.length; i += 4)
    if (a.data[i] !== b.data[i] || a.data[i + 1] !== b.data[i + 1] || a.data[i + 2] !== b.data[i + 2])
      count++;
  return count;
}

/** An SVG drawn by resvg at `times` the size and averaged down: close to the true coverage of every pixel. */
export function supersampled(svg: string, width: number, times: number): Picture {
  const large = new Resvg(svg, { fitTo: { mode: "width", value: width * times } }).render();
  const height = Math.round(large.height / times);
  const source = new Uint8Array(large.pixels);
  const sums = new Uint32Array(width * height * 4);
  for (let y = 0; y < height * times; y++) {
    const row = Math.floor(y / times) * width;
    let from = y * large.width * 4;
    for (let x = 0; x < width; x++) {
      const at = (row + x) * 4;
      for (let i = 0; i < times; i++, from += 4)
        for (let c = 0; c < 4; c++) sums[at + c]! += source[from + c]!;
    }
  }
  const data = Uint8Array.from(sums, (sum) => Math.round(sum / (times * times)));
  return { width, height, data };
}

/** Peak signal-to-noise ratio over red, green and blue, in dB: 10 log10(255² / mean squared error). */
export function psnr(a: Picture, b: Picture): number {
  if (a.width !== b.width || a.height !== b.height) return 0;
  let sum = 0;
  for (let i = 0; i < a.data.length; i += 4)
    for (let c = 0; c < 3; c++) {
      const d = a.data[i + c]! - b.data[i + c]!;
      sum += d * d;
    }
  return 10 * Math.log10((255 * 255) / (sum / (a.width * a.height * 3)));
}
