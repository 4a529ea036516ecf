import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import type { Size } from "../geometry/lattice.ts";
import type { Layer } from "./tile.ts";

/**
 * SHA-256 (FIPS 180-4) of a tile, in hexadecimal: of the block's size and, for every layer from back to front,
 * its role, its contours' curve counts and its points, all as little-endian 32-bit numbers.
 */
export function digestOf(block: Size, layers: readonly Layer[]): string {
  const hash = sha256.create();
  const words = (values: ArrayLike<number>): void => {
    const bytes = new Uint8Array(values.length * 4);
    const view = new DataView(bytes.buffer);
    for (let i = 0; i < values.length; i++) view.setInt32(i * 4, values[i]!, true);
    hash.update(bytes);
  };
  words([1, block.width, block.height, layers.length]);
  for (const { role, path } of layers) {
    words([role.length, path.contours.length, path.points.length]);
    words(Array.from(role, (letter) => letter.codePointAt(0)!));
    words(path.contours);
    words(path.points);
  }
  return bytesToHex(hash.digest());
}
