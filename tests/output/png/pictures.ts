import { PNG } from "pngjs";
import { movePath } from "../../../src/geometry/matrix.ts";
import { rasterize } from "../../../src/output/png/rasterize.ts";
import type { Tile } from "../../../src/tile/tile.ts";

/** A decoded picture, red, green, blue, alpha. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

export const decode = (png: Uint8Array): Pixels => PNG.sync.read(Buffer.from(png));

/** Inks that are far apart, for as many roles as wanted. */
export const inksOf = (tile: Tile): Record<string, string> => {
  const some = ["#f6ead7", "#2f4a38", "#5f8b5f", "#d9603c", "#f2c14e", "#28304a", "#b0406a", "#70a0c0"];
  return Object.fromEntries(tile.recipe.roles.map((role, i) => [role, some[i % some.length]!]));
};

/** Rasterises `width` pixels and reads the file back. */
export async function picture(tile: Tile, width: number, rows?: number): Promise<Pixels> {
  const raster = await rasterize(tile, { width }, rows);
  return decode(raster.png({ name: "test", inks: inksOf(tile) }));
}

/** The tile with everything moved by whole µm. */
export const moved = (tile: Tile, dx: number, dy: number): Tile => ({
  ...tile,
  layers: tile.layers.map(({ role, path }) => ({ role, path: movePath(path, dx, dy) })),
});

/** The picture moved by whole pixels, what leaves it coming in at the other side. */
export function rolled({ width, height, data }: Pixels, dx: number, dy: number): Pixels {
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const to = ((((y + dy) % height) + height) % height) * width + ((((x + dx) % width) + width) % width);
      out.set(data.subarray((y * width + x) * 4, (y * width + x) * 4 + 4), to * 4);
    }
  return { width, height, data: out };
}

/** How many pixels are not the same; every one, when the sizes are not. */
export function differing(a: Pixels, b: Pixels): number {
  if (a.width !== b.width || a.height !== b.height) return a.width * a.height;
  let count = 0;
  for (let i = 0; i < a.data.length; i += 4)
    if ([0, 1, 2, 3].some((c) => a.data[i + c] !== b.data[i + c])) count++;
  return count;
}

/** Peak signal-to-noise ratio over red, green and blue, in dB. */
export function psnr(a: Pixels, b: Pixels): number {
  let sum = 0;
  for (let i = 0; i < a.data.length; i++) if (i % 4 !== 3) sum += (a.data[i]! - b.data[i]!) ** 2;
  return 10 * Math.log10((255 * 255 * a.width * a.height * 3) / sum);
}

/** Each `by` x `by` square of pixels averaged to one. */
export function averaged({ width, height, data }: Pixels, by: number): Pixels {
  const [w, h] = [width / by, height / by];
  const sums = new Float64Array(w * h * 4);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const to = (Math.floor(y / by) * w + Math.floor(x / by)) * 4;
      const from = (y * width + x) * 4;
      for (let c = 0; c < 4; c++) sums[to + c]! += data[from + c]!;
    }
  return { width: w, height: h, data: Uint8Array.from(sums, (sum) => Math.round(sum / (by * by))) };
}

/** The chunks of a PNG file, in order, with their data and whether the CRC is right by the file's own word. */
export function chunksOf(png: Uint8Array): { type: string; data: Uint8Array; crc: number }[] {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  const out: { type: string; data: Uint8Array; crc: number }[] = [];
  for (let at = 8; at < png.length; ) {
    const length = view.getUint32(at);
    const type = String.fromCharCode(...png.subarray(at + 4, at + 8));
    out.push({ type, data: png.subarray(at + 8, at + 8 + length), crc: view.getUint32(at + 8 + length) });
    at += 12 + length;
  }
  return out;
}
