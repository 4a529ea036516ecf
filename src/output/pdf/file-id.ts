import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import { strToU8 } from "fflate";

/** A file identifier (ISO 32000-1, 14.4) of 16 bytes in hexadecimal, taken from what is in the file instead of the time. */
export function fileId(parts: readonly (string | Uint8Array)[]): string {
  const hash = sha256.create();
  for (const part of parts) hash.update(typeof part === "string" ? strToU8(part) : part);
  return bytesToHex(hash.digest()).slice(0, 32);
}
