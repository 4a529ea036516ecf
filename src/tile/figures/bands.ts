import { commonDivisor } from "../../geometry/block.ts";
import type { Lattice, Vector } from "../../geometry/lattice.ts";
import type { Raster } from "./raster.ts";

/**
 * The share of ink in straight bands of the given width (µm) along a lattice vector, for bands that begin at as many evenly
 * spaced lines. A line through pixel (x, y) along the block's (p, q) keeps
 * q·x - p·y, so pixels are sorted by that number, whole and exact on the torus, and summed over the band.
 */
export function bandsAlong(raster: Raster, { block }: Lattice, vector: Vector, width: number): Float64Array {
  const { columns, rows, ink } = raster;
  const [p, q] = inBlocks(vector, block.width, block.height);
  // Numbers that no pixel has are left out: all are multiples of a power of two.
  const finest = Math.max(columns, rows);
  const apart = commonDivisor((q * finest) / columns, (p * finest) / rows);
  const lines = finest / apart;
  const [stepX, stepY] = [(q * lines) / columns, (-p * lines) / rows];
  const sums = new Float64Array(lines);
  const counts = new Float64Array(lines);
  for (let y = 0; y < rows; y++) {
    let line = y * stepY;
    for (let x = 0, i = y * columns; x < columns; x++, i++, line += stepX) {
      const at = line & (lines - 1);
      counts[at] = counts[at]! + 1;
      sums[at] = sums[at]! + (ink[i]! & 1);
    }
  }
  const [vx, vy] = [p * block.width, q * block.height];
  const period = (block.width * block.height) / Math.sqrt(vx * vx + vy * vy);
  const breadth = Math.max(1, Math.min(lines, Math.round((width / period) * lines)));
  const out = new Float64Array(lines);
  let [sum, count] = [0, 0];
  for (let i = 0; i < lines + breadth - 1; i++) {
    const at = i & (lines - 1);
    sum += sums[at]!;
    count += counts[at]!;
    if (i >= breadth) {
      sum -= sums[i - breadth]!;
      count -= counts[i - breadth]!;
    }
    if (i >= breadth - 1) out[i - breadth + 1] = sum / count;
  }
  return out;
}

/** A vector's direction in whole blocks across and down, as small as they come. */
function inBlocks([x, y]: Vector, width: number, height: number): readonly [p: number, q: number] {
  const [across, down] = [x * height, y * width];
  const divisor = commonDivisor(across, down);
  return [across / divisor, down / divisor];
}
