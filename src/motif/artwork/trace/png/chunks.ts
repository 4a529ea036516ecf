import { badPicture, notPng } from "./refused.ts";

const SIGNATURE = [137, 80, 78, 71, 13, 10, 26, 10];
/** Most chunks of a file: a writer that cuts image data into the smallest usual pieces stays far below. */
const MOST_CHUNKS = 100_000;

/** One chunk of a PNG: its name, and its data within the file. */
export interface Chunk {
  readonly name: string;
  readonly data: Uint8Array;
  /** The chunk whole, with its length and checksum. */
  readonly whole: Uint8Array;
}

/** The chunks of a PNG up to its end (PNG, Third Edition, 5.3). @throws SprigwrightError `not-png`, `bad-picture` */
export function chunksOf(bytes: Uint8Array, where: string): Chunk[] {
  if (!SIGNATURE.every((byte, i) => bytes[i] === byte)) throw notPng(bytes, where);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const chunks: Chunk[] = [];
  for (let at = SIGNATURE.length; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const end = at + 12 + length;
    if (end > bytes.length) break;
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    chunks.push({ name, data: bytes.subarray(at + 8, end - 4), whole: bytes.subarray(at, end) });
    if (name === "IEND") return chunks;
    if (chunks.length > MOST_CHUNKS) throw badPicture(where, `it has more than ${MOST_CHUNKS} chunks`);
    at = end;
  }
  throw badPicture(where, "it is cut off: its end is missing", "copy or export the PNG again");
}

/** Chunks as a file. */
export function fileOf(chunks: readonly Chunk[]): Uint8Array {
  const file = new Uint8Array(chunks.reduce((sum, { whole }) => sum + whole.length, SIGNATURE.length));
  file.set(SIGNATURE);
  let at = SIGNATURE.length;
  for (const { whole } of chunks) {
    file.set(whole, at);
    at += whole.length;
  }
  return file;
}
