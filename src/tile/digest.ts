import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import type { Size } from "../geometry/lattice.ts";
import type { Layer } from "./tile.ts";

/**
 * SHA-256 (FIPS 180-4) of a tile, in hexadecimal.
 *
 * It is taken over signed 32-bit little-endian numbers: first 1 (the version of this form), the block's width
 * and height in µm, and the number of layers. Then, for each layer from back to front: the length of its role's
 * name, the number of its contours and of its coordinates; the name's code points; the curves of each contour;
 * and the coordinates, x, y, x, y …, in µm, as they stand in the layer.
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
