import type { Size } from "../../geometry/lattice.ts";
import { dataChunks } from "./chunks.ts";
import { encode, type Values } from "./encode.ts";
import type { Picture, Step } from "./picture.ts";

/** A picture's pixels as IDAT chunks, with a rest now and then. */
export async function slowData(
  picture: Picture,
  pixels: Size,
  values: Values,
  step: Step,
): Promise<readonly Uint8Array[]> {
  const work = encode(picture, pixels, values);
  for (;;) {
    const { done, value } = work.next();
    if (done) return asChunks(value);
    await step(value);
  }
}

/** The same at once. */
export function data(picture: Picture, pixels: Size, values: Values): readonly Uint8Array[] {
  const work = encode(picture, pixels, values);
  for (;;) {
    const { done, value } = work.next();
    if (done) return asChunks(value);
  }
}

/** Pieces of a zlib stream as chunks; a piece that is there again is wrapped once. */
function asChunks(pieces: readonly Uint8Array[]): readonly Uint8Array[] {
  const made = new Map<Uint8Array, Uint8Array>();
  return pieces.map((piece) => {
    const chunks = made.get(piece) ?? dataChunks(piece);
    made.set(piece, chunks);
    return chunks;
  });
}
