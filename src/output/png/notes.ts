import { strToU8, zlibSync } from "fflate";
import { VERSION } from "../../tile/version.ts";
import { type About, xmpPacket } from "../xmp.ts";
import { chunk, joinBytes } from "./chunks.ts";

/** Keyword of the iTXt chunk that holds what the picture was made from. */
export const RECIPE_KEYWORD = "sprigwright:recipe";

/** Keyword that XMP has in PNG (ISO 16684-1, and XMP Specification Part 3, 1.1.5). */
export const XMP_KEYWORD = "XML:com.adobe.xmp";

/** Longer notes are compressed (bytes). */
const LONG = 1024;

/**
 * The `Software` chunk; the text that the picture can be made again from, if there is one; and what the picture says about
 * itself as XMP.
 */
export function noteChunks(about: About, kept: string | undefined): Uint8Array {
  const text = kept === undefined ? undefined : strToU8(kept);
  return joinBytes([
    chunk("tEXt", latin(`Software\0Sprigwright ${VERSION}`)),
    ...(text ? [textChunk(RECIPE_KEYWORD, text, text.length > LONG)] : []),
    textChunk(XMP_KEYWORD, strToU8(xmpPacket(about, "image/png")), false),
  ]);
}

/** Keyword, compressed or not, method 0, no language, no translated keyword, text (PNG, third edition, 11.3.3.4). */
export function textChunk(keyword: string, text: Uint8Array, long: boolean): Uint8Array {
  const head = [...latin(`${keyword}\0`), long ? 1 : 0, 0, 0, 0];
  // `mem` is given because fflate's own choice of it goes through Math.log, which differs between engines.
  return chunk("iTXt", joinBytes([head, long ? zlibSync(text, { level: 9, mem: 4 }) : text]));
}

const latin = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0) & 255);
