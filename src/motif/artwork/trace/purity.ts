import { channelGap, type Raster } from "./raster.ts";

/** A pixel that two inks share: an edge runs through it. */
export const SHARED = 0;
/** A pixel of one ink with an edge at its side. */
export const BESIDE = 1;
/** A pixel amidst its own ink. */
export const AMIDST = 2;

/** The faintest contrast that is an edge, in levels; where there is grain; and how many times the grain it must be. */
const FAINTEST = 6;
const FAINTEST_ROUGH = 20;
const PER_GRAIN = 7;
/** How much of a contrast a pixel must lie inside to be shared. */
const LEAST = 0.08;

/**
 * Which pixels are shared by two inks: those whose colour lies between the colours at two opposite sides of them.
 * The middle of a thin line lies between none, since it is the farthest from what is around it.
 * @param grain what pixels of one paint differ by
 */
export function purityOf(raster: Raster, grain: number): Uint8Array {
  const { width, height, data, words } = raster;
  const least = grain === 0 ? FAINTEST : Math.max(FAINTEST_ROUGH, PER_GRAIN * grain);
  const purity = new Uint8Array(width * height).fill(AMIDST);
  const pairs = [1, width, width + 1, width - 1];
  const calm = calmBlocks(raster, least);
  const across = Math.ceil(width / BLOCK);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      if (x % BLOCK === 0 && calm[Math.floor(y / BLOCK) * across + x / BLOCK]) {
        x += BLOCK - 1;
        continue;
      }
      const i = y * width + x;
      const rim = x === 0 || y === 0 || x === width - 1 || y === height - 1;
      for (let k = 0; k < 4; k++) {
        const step = pairs[k]!;
        if (rim && !(k === 0 && x > 0 && x < width - 1) && !(k === 1 && y > 0 && y < height - 1)) continue;
        const [a, b] = [i - step, i + step];
        if (words[a] === words[i] && words[b] === words[i]) continue;
        const state = between(data, a, b, i, least);
        if (state < purity[i]!) purity[i] = state;
        if (state === SHARED) break;
      }
    }
  return purity;
}

/** Side of the blocks that are passed over where they are all of one paint. */
const BLOCK = 8;

/** Blocks that differ within themselves, and from the pixels around them, by less than `least`. */
function calmBlocks({ width, height, data }: Raster, least: number): Uint8Array {
  const [columns, rows] = [Math.ceil(width / BLOCK), Math.ceil(height / BLOCK)];
  const calm = new Uint8Array(columns * rows);
  for (let k = 0; k < calm.length; k++) {
    const column = k % columns;
    const row = (k - column) / columns;
    const [left, right] = [Math.max(0, column * BLOCK - 1), Math.min(width - 1, (column + 1) * BLOCK)];
    const [top, bottom] = [Math.max(0, row * BLOCK - 1), Math.min(height - 1, (row + 1) * BLOCK)];
    const first = 4 * (top * width + left);
    let near = true;
    for (let y = top; near && y <= bottom; y++)
      for (let at = 4 * (y * width + left), end = 4 * (y * width + right); near && at <= end; at += 4)
        for (let c = 0; c < 4; c++) {
          const off = data[at + c]! - data[first + c]!;
          if (2 * off >= least || -2 * off >= least) near = false;
        }
    if (near) calm[k] = 1;
  }
  return calm;
}

function between(data: Uint8Array, a: number, b: number, i: number, least: number): number {
  const gap = channelGap(data, a, b);
  if (gap < least)
    return channelGap(data, a, i) * 2 > least || channelGap(data, b, i) * 2 > least ? BESIDE : AMIDST;
  const [p, q, o] = [4 * a, 4 * b, 4 * i];
  let along = 0;
  let across = 0;
  let own = 0;
  for (let c = 0; c < 4; c++) {
    const start = data[p + c]!;
    const way = data[q + c]! - start;
    const off = data[o + c]! - start;
    along += way * off;
    across += way * way;
    own += off * off;
  }
  const t = along / across;
  if (t < LEAST || t > 1 - LEAST) return BESIDE;
  return own - t * along < 0.12 * across ? SHARED : BESIDE;
}
