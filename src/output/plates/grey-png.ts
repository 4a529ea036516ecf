import { strToU8 } from "fflate";
import { pixelsPerMetre } from "../../units/pixels.ts";
import { chunk, dataChunks, joinBytes, SIGNATURE } from "../png/chunks.ts";
import type { Grid } from "../png/grid.ts";

/** A PNG in grey of 1 or 8 bits (colour type 0) at its true size, from a zlib stream of its rows. */
export function greyPng(grid: Grid, depth: 1 | 8, title: string, stream: Uint8Array): Uint8Array {
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, grid.width);
  header.setUint32(4, grid.height);
  header.setUint8(8, depth);
  const size = new DataView(new ArrayBuffer(9));
  size.setUint32(0, pixelsPerMetre(grid.width, grid.block.width));
  size.setUint32(4, pixelsPerMetre(grid.height, grid.block.height));
  size.setUint8(8, 1);
  return joinBytes([
    SIGNATURE,
    chunk("IHDR", new Uint8Array(header.buffer)),
    chunk("pHYs", new Uint8Array(size.buffer)),
    chunk("tEXt", strToU8(`Title\0${title}`, true)),
    dataChunks(stream),
    chunk("IEND", new Uint8Array(0)),
  ]);
}
