// What must hold for a field of any repeat, as numbers.
import { buildTile, type RepeatUse } from "../../src/index.ts";
import { arrangementOf } from "../../src/repeat/arrangement.ts";
import { differing, type Picture, psnr, rolled } from "../flow/picture.ts";
import { PIXEL } from "./every.ts";
import { byLattice, clearance, harbour, over, picture, under } from "./field.ts";

export interface Examined {
  /** Pixels that differ when the field is moved by a lattice vector. */
  readonly unlikeAtA: number;
  readonly unlikeAtB: number;
  /** Pixels in which the block tiled straight differs from the field set by the lattice. */
  readonly unlikeByLattice: number;
  /** The worst PSNR (dB) of the field against itself under an operation; Infinity when equal or without any. */
  readonly symmetry: number;
  /** The smallest distance of any two outlines, by jsts (mm). */
  readonly clearance: number;
  readonly motifs: number;
}

export async function examine(repeat: RepeatUse, seed: string): Promise<Examined> {
  const tile = await buildTile(harbour(repeat, seed));
  const arrangement = arrangementOf(repeat);
  const { lattice, operations } = arrangement;
  const block = await picture(tile);
  const unlike = ([x, y]: readonly [number, number]): number => differing(block, rolledBy(block, x, y));
  let symmetry = Infinity;
  for (const operation of operations.slice(1)) {
    const pixels = inPixels(block, operation);
    if (pixels) symmetry = Math.min(symmetry, psnr(block, pixels));
    else {
      const { image, times } = under(tile, operation);
      symmetry = Math.min(symmetry, psnr(await picture(over(tile, times)), await picture(image)));
    }
  }
  return {
    unlikeAtA: unlike(lattice.a),
    unlikeAtB: unlike(lattice.b),
    unlikeByLattice: differing(
      await picture(tile, { across: 2, down: 2 }),
      await picture(byLattice(tile, arrangement)),
    ),
    symmetry,
    clearance: clearance(tile, repeat),
    motifs: tile.figures.motifs,
  };
}

const rolledBy = (from: Picture, x: number, y: number): Picture => {
  const [across, down] = [Math.round(x / PIXEL), Math.round(y / PIXEL)];
  const positive = (n: number, size: number): number => ((n % size) + size) % size;
  return rolled(from, positive(across, from.width), positive(down, from.height));
};

/** The picture with its very pixels moved, where the operation takes pixels to pixels. */
function inPixels(from: Picture, m: readonly number[]): Picture | undefined {
  const [a, b, c, d] = m as [number, number, number, number];
  const [e, f] = [m[4]! / PIXEL, m[5]! / PIXEL];
  if (![a, b, c, d, e, f].every(Number.isInteger)) return undefined;
  const { width, height } = from;
  const data = new Uint8Array(from.data.length);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      // Middles of pixels go to middles of pixels.
      const toX = a * (x + 0.5) + c * (y + 0.5) + e - 0.5;
      const toY = b * (x + 0.5) + d * (y + 0.5) + f - 0.5;
      const to = (((toY % height) + height) % height) * width + (((toX % width) + width) % width);
      for (let k = 0; k < 4; k++) data[to * 4 + k] = from.data[(y * width + x) * 4 + k]!;
    }
  return { width, height, data };
}
