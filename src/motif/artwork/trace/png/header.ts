import type { Chunk } from "./chunks.ts";
import { badPicture, pictureTooLarge } from "./refused.ts";

/** Most pixels of a picture: A4 at 600 dpi has 35 million. */
export const MOST_PIXELS = 40_000_000;
/** Longest side of a picture, in pixels. */
export const LONGEST_SIDE = 30_000;

/** What a PNG says of itself (PNG, Third Edition, 11.2.1). */
export interface Header {
  readonly width: number;
  readonly height: number;
  /** Bits of a channel. */
  readonly depth: number;
  readonly channels: number;
  readonly palette: boolean;
  readonly interlaced: boolean;
}

const CHANNELS: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };
const DEPTHS: Readonly<Record<number, readonly number[]>> = {
  0: [1, 2, 4, 8, 16],
  2: [8, 16],
  3: [1, 2, 4, 8],
  4: [8, 16],
  6: [8, 16],
};

/** @throws SprigwrightError `bad-picture`, `picture-too-large` */
export function readHeader(chunk: Chunk | undefined, where: string): Header {
  if (chunk?.name !== "IHDR" || chunk.data.length !== 13)
    throw badPicture(where, "it does not begin as a PNG does");
  const view = new DataView(chunk.data.buffer, chunk.data.byteOffset, 13);
  const [width, height] = [view.getUint32(0), view.getUint32(4)];
  checkExtent(width, height, where);
  const [depth, type] = [chunk.data[8]!, chunk.data[9]!];
  if (!DEPTHS[type]?.includes(depth)) throw badPicture(where, `it has ${depth} bits in colour type ${type}`);
  if (chunk.data[10] !== 0 || chunk.data[11] !== 0 || chunk.data[12]! > 1)
    throw badPicture(where, "it is packed in a way that the standard does not know");
  return {
    width,
    height,
    depth,
    channels: CHANNELS[type]!,
    palette: type === 3,
    interlaced: chunk.data[12] === 1,
  };
}

/** @throws SprigwrightError `bad-picture`, `picture-too-large` */
export function checkExtent(width: number, height: number, where: string): void {
  if (!(width >= 1 && height >= 1)) throw badPicture(where, `it is ${width} x ${height} pixels`);
  if (width > LONGEST_SIDE || height > LONGEST_SIDE || width * height > MOST_PIXELS)
    throw pictureTooLarge(
      where,
      `it is ${width} x ${height} pixels; at most ${MOST_PIXELS / 1e6} million are read, ${LONGEST_SIDE} a side`,
    );
}

/** First columns and rows, and steps, of the seven passes of an interlaced PNG. */
const PASSES = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

/** Bytes of the picture's rows, each with its filter's byte, before they are packed. */
export function unpackedLength({ width, height, depth, channels, interlaced }: Header): number {
  const rows = (columns: number, count: number): number =>
    columns > 0 && count > 0 ? count * (1 + Math.ceil((columns * channels * depth) / 8)) : 0;
  if (!interlaced) return rows(width, height);
  return PASSES.reduce(
    (sum, [x, y, stepX, stepY]) =>
      sum + rows(Math.ceil((width - x) / stepX), Math.ceil((height - y) / stepY)),
    0,
  );
}
